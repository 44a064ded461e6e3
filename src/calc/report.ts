import type { Band } from './core/band.ts';
import type { Check } from './core/check.ts';
import type { SubsystemId } from './core/decision.ts';
import type { Machine } from './core/machine.ts';
import type { OnceAndYearly } from './core/money.ts';
import type { Path } from './core/path.ts';
import type { PurchaseState } from './core/purchase.ts';
import type { LatheState, StageId } from './core/task.ts';
import type { Setting } from './settings.ts';

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

/** A sum that is known to the cent, or a planning range in dollars; `how` says in words where it comes from. */
export interface Charge {
  /** Decimal text, dollars to the cent; missing where only a range is known. */
  readonly exact?: string;
  readonly range: Band;
  readonly how: string;
}

/** What the owner typed for a line, priced in dollars. Carriage, tax and duty stand with the seller, not here. */
export interface PricedPurchase {
  readonly state: PurchaseState;
  /** Units of the list quoted or bought. */
  readonly qty: number;
  /** Units still to be bought beside them, spares among them. */
  readonly stillNeeded: number;
  /** Dollars for `qty`, decimal text to the cent, rounded once; missing where the price cannot be used. */
  readonly goods?: string;
  /** Dollars for one unit of the list, decimal text to at most four places. */
  readonly each?: string;
  /** As typed: "12.50 EUR a pack". Empty where no price was typed. */
  readonly asTyped: string;
  /** The price of one unit lies outside our band: ask whether unit or pack was meant. The price counts all the same. */
  readonly outsideBand?: 'below' | 'above';
  /** Why a typed price does not count: no price, not a number, or a currency without a rate. Our band stands in. */
  readonly asks?: 'price' | 'number' | 'currency';
  /** Name of the seller as the owner gave it. */
  readonly seller?: string;
  readonly date?: string;
  readonly note?: string;
}

/** When to order, in days from the start of the work; below zero: before it. With a start day in the path, dates too. */
export interface OrderBy {
  /** First day of the stage that needs it, at the plan's hours a week. */
  readonly neededAt: number;
  /** Needed at, less the likely and less the slow lead time. */
  readonly likely: number;
  readonly slow: number;
  /** ISO 8601 days of the same three. */
  readonly dates?: { readonly neededAt: string; readonly likely: string; readonly slow: string };
}

export interface BillLine {
  readonly part: string;
  readonly subsystem: SubsystemId;
  readonly name: string;
  readonly note: string;
  readonly unit: string;
  readonly qty: number;
  /** Dollars for one unit and for the line, before freight, tax and duty. Zero for what is owned. */
  readonly each: Band;
  readonly line: Band;
  readonly owned: boolean;
  readonly credit: boolean;
  readonly yearly: boolean;
  readonly shopTool: boolean;
  readonly reasons: readonly string[];
  readonly leadDays: Band;
  readonly ship: string;
  readonly spares?: string;
  readonly inspect?: string;
  /** "have": in the drawer. "returned": sent back, so needed again. */
  readonly state: 'have' | PurchaseState;
  /** Units on top of the need that are kept as spares, each reason once. */
  readonly keep: { readonly count: number; readonly why: readonly string[] };
  /** Need and spares. */
  readonly toHave: number;
  /** Units in a pack, whole packs still to be bought, and what is left over of all that is bought. */
  readonly pack: number;
  readonly packs: number;
  readonly leftOver: number;
  /** Cut or order size from the design: "order 12 × 4, 480 mm long". */
  readonly size?: string;
  /** Stage that needs it first. */
  readonly stage: StageId;
  readonly orderBy: OrderBy;
  readonly purchase?: PricedPurchase;
}

/** One order at one shop: what is spent and what is only quoted are two orders. Money to the cent; parts add up. */
export interface SellerRow {
  /** Name as the owner gave it; empty for lines without a seller, whose freight, tax and duty stay a planning share. */
  readonly seller: string;
  readonly state: 'spent' | 'quoted';
  /** Part ids. */
  readonly lines: readonly string[];
  /** Decimal text, sum of the printed lines. */
  readonly goods: string;
  readonly carriage: Charge;
  readonly tax: Charge;
  readonly duty: Charge;
  /** Goods and charges together. */
  readonly total: Charge;
  /** Tax that the prices already hold, decimal text; only where it is so and the rate is known. */
  readonly taxInside?: string;
  /** Goods still missing until carriage is free, decimal text; only where the shop has such a limit and it is not met. */
  readonly toFreeCarriage?: string;
}

/** How far the estimate is defined, in the terms of published cost-estimating practice. */
export interface Grade {
  /** AACE International 18R-97: 5 is a first idea, 1 is priced line by line. */
  readonly class: 1 | 2 | 3 | 4 | 5;
  /** Shares of the mean total, fractions of one; they add up to one. */
  readonly shares: {
    readonly spent: number;
    readonly quoted: number;
    /** Planning prices of lines whose questions and figures are answered. */
    readonly settled: number;
    readonly assumed: number;
  };
  /** Range that the class expects about the estimate, fractions: [-0.5, -0.2] and [0.3, 1]. */
  readonly expected: {
    readonly low: readonly [number, number];
    readonly high: readonly [number, number];
  };
  /** Where eight of ten of our builds lie about the middle, fractions. */
  readonly ours: { readonly low: number; readonly high: number };
  /** Sentences: what is defined, what is assumed, the class, its range against ours. */
  readonly basis: readonly string[];
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
  readonly mains?: true;
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

/** How a total spreads over the builds. Money in dollars, time in hours or weeks. */
export interface Spread {
  readonly p10: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p80: number;
  readonly p90: number;
  /** Twenty equally likely outcomes, in order. */
  readonly twenty: readonly number[];
  readonly mean: number;
}

/** What the total is made of: sums of lines before freight, and the typical share of each in the builds. */
export interface MoneyParts {
  readonly goods: Band;
  /** Goods that people count when they say what "the parts" cost: no shop tools, no trouble, no freight. */
  readonly bareParts: Band;
  /** Taken off again: what selling the old parts brings. */
  readonly credits: Band;
  readonly landedRate: Band;
  /** Mean dollars over the builds; they add up to the mean of the total. */
  readonly meanGoods: number;
  readonly meanLanded: number;
  readonly meanTrouble: number;
  /** At or below zero. */
  readonly meanCredit: number;
  /**
   * The same means in whole cents, by largest remainder: goods + landed + trouble + credit = total, and
   * committed + stillToBuy + trouble + credit = total. These are the figures to print.
   */
  readonly cents: {
    readonly goods: number;
    readonly landed: number;
    readonly trouble: number;
    readonly credit: number;
    readonly total: number;
    readonly committed: number;
    readonly stillToBuy: number;
  };
  /** From the bare parts that people quote to the mean of everything, step by step; whole cents that add up to the total. */
  readonly fromBare: readonly { readonly name: string; readonly cents: number }[];
}

/** Money of the report: the whole total as a spread, and how much of it is settled. */
export interface ReportMoney extends Spread {
  readonly parts: MoneyParts;
  /** Paid or ordered, to the cent: goods, carriage, tax and duty as far as they are known exactly. Decimal text. */
  readonly committed: string;
  /** The same for what is quoted and not ordered. Decimal text. */
  readonly quoted: string;
  /** Everything beside the committed money, trouble and credits apart. */
  readonly stillToBuy: Spread;
  /** Money for what goes wrong, or the flat allowance in its place. */
  readonly trouble: Spread;
  /** Which of the two stands in the totals; never both. */
  readonly troubleBy: 'risks' | 'allowance';
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
