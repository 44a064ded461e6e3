import type { Band } from './core/band.ts';
import type { Check } from './core/check.ts';
import type { SubsystemId } from './core/decision.ts';
import type { Machine } from './core/machine.ts';
import type { OnceAndYearly } from './core/money.ts';
import type { Path } from './core/path.ts';
import type { LatheState, StageId } from './core/task.ts';
import type { BillLine } from './report-bill.ts';
import type { Grade, ReportMoney, SellerRow, Spread } from './report-money.ts';
import type { Setting } from './settings.ts';

export type * from './report-bill.ts';
export type * from './report-money.ts';
export type { Setting } from './settings.ts';

/** Why an option cannot be taken as things stand, and which answers stand in its way. */
export interface Block {
  readonly option: string;
  readonly reasons: readonly {
    readonly rule: string;
    readonly say: string;
    readonly clash: readonly string[];
  }[];
}

/**
 * A question on this path.
 * answered: the owner chose it. open: not answered or "not sure yet"; an assumed answer stands in.
 * clash: answered, but an earlier answer rules it out; the old answer is kept and an assumed one stands in.
 * not-asked: does not arise on this path.
 */
export interface ChoiceView {
  readonly decision: string;
  readonly subsystem: SubsystemId;
  readonly place: 'guide' | 'lathe';
  readonly status: 'answered' | 'open' | 'clash' | 'not-asked';
  /** True when the owner said "not sure yet" rather than passing it by. */
  readonly notSure: boolean;
  /** Options the plan stands on; empty when not asked. */
  readonly options: readonly string[];
  /** What the owner answered where it could not be used. */
  readonly refused: readonly string[];
  readonly why: string;
  readonly blocked: readonly Block[];
}

/** Something of the trade that speaks up about this path. */
export interface Finding {
  readonly id: string;
  readonly level: 'note' | 'look' | 'stop';
  readonly say: string;
  /** Decisions worth looking at again. */
  readonly decisions: readonly string[];
}

export interface PlannedTask {
  readonly id: string;
  readonly subsystem: SubsystemId;
  readonly stage: StageId;
  readonly name: string;
  /** Base, scaled, with extra work added. */
  readonly hours: Band;
  /** Why the hours differ from the plain task. */
  readonly because: readonly string[];
  /** Tasks of this plan that come first. */
  readonly after: readonly string[];
  readonly tools: string;
  readonly lathe: LatheState;
  readonly undo: 'can-be-undone' | 'partly' | 'cannot-be-undone';
  readonly test: string;
  readonly safety?: string;
  readonly note?: string;
}

/** A condition that must be true before going on. */
export interface HoldPoint {
  readonly id: string;
  readonly name: string;
  readonly say: string;
  /** The stage that it closes. */
  readonly after: StageId;
  readonly tasks: readonly string[];
}

/** You may stop here and have a working machine. */
export interface StoppingPoint {
  readonly id: string;
  readonly say: string;
  readonly after: StageId;
}

export interface StagePlan {
  readonly id: StageId;
  readonly number: number;
  readonly name: string;
  readonly tasks: readonly PlannedTask[];
  readonly hours: Band;
  readonly outOfUse: boolean;
  readonly hold?: HoldPoint;
  readonly stop?: StoppingPoint;
}

export interface RiskRow {
  readonly id: string;
  readonly subsystem: SubsystemId;
  readonly name: string;
  readonly cause: string;
  readonly effect: string;
  readonly sign: string;
  readonly prevent: string;
  /** Chance on this path, fraction of one; builds in which it happens, of twenty. */
  readonly chance: number;
  readonly ofTwenty: number;
  /** Mean dollars and hours over all builds; what risks are ranked by. */
  readonly expectedMoney: number;
  readonly expectedHours: number;
  readonly money: Band;
  readonly hours: Band;
  readonly stage: StageId;
  readonly injury: boolean;
  readonly counted: boolean;
  /** Our chance, and the owner's own where one was given; `chance` is the one that counts. */
  readonly ours: number;
  readonly theirs?: number;
  /** Parts of which a spare stands on the list: its money is paid there, and only the hours are counted here. */
  readonly spares?: readonly string[];
  /** What raised or lowered the chance here. */
  readonly levers: readonly { readonly by: number; readonly why: string }[];
}

export interface Verdict {
  readonly id: string;
  readonly say: string;
  readonly weight: 'go' | 'think' | 'do-not';
}

/** A check and the room that makes it. */
export interface PlacedCheck extends Check {
  readonly subsystem: SubsystemId;
}

/** Everything computed from a path. Plain data: it can be sent to a worker, printed and compared. */
export interface Report {
  readonly path: Path;
  readonly edition: { readonly id: string; readonly date: string; readonly basis: string };
  readonly machine: Machine;
  readonly choices: readonly ChoiceView[];
  readonly rooms: readonly {
    readonly id: SubsystemId;
    readonly asked: number;
    readonly answered: number;
    readonly notAsked: number;
    readonly state: 'open' | 'part' | 'settled';
  }[];
  readonly verdicts: readonly Verdict[];
  readonly findings: readonly Finding[];
  readonly checks: readonly PlacedCheck[];
  /** The sheet that stays with the machine: what is set, and how each figure is found. */
  readonly settings: readonly Setting[];
  readonly bill: OnceAndYearly<readonly BillLine[]>;
  readonly stages: readonly StagePlan[];
  /** Task ids in an order that respects every prerequisite and hold point. */
  readonly order: readonly string[];
  readonly risks: readonly RiskRow[];
  readonly money: ReportMoney;
  /** Orders by shop; empty until something is quoted or bought. */
  readonly sellers: readonly SellerRow[];
  readonly grade: Grade;
  readonly yearly: Band;
  readonly hours: Spread & { readonly planned: Band; readonly meanTrouble: number };
  /** Weeks that the lathe cannot be used, at the owner's hours a week. */
  readonly weeksOut: Spread;
  /** Weeks from start to finish, waiting for parts left out where other work fills it. */
  readonly weeksTotal: Spread;
  /** Questions that widen the range most are listed by the screens of a later page; here only which are open. */
  readonly openQuestions: readonly string[];
  /** How many different ways of answering the open questions the builds hold; 1 when nothing is open. */
  readonly waysOfAnswering: number;
}
