import type { Ability, AbilityRow, Alternative } from '../../core/alternative.ts';
import type { Band } from '../../core/band.ts';
import type { Skill, SubsystemId } from '../../core/decision.ts';
import type { Path } from '../../core/path.ts';
import type { StageId } from '../../core/task.ts';
import type { Spread } from '../../report.ts';
import type { BuildsOnce } from '../../worth/alternatives.ts';

export interface Named {
  readonly id: string;
  readonly name: string;
}

/** Skills run from 1 (anyone) to 5 (toolroom). */
export interface HardestSkill {
  readonly level: Skill;
  /** Answers of the plan that ask for it; empty for an alternative with bands of its own. */
  readonly asks: readonly { readonly decision: string; readonly option: string }[];
}

/** A check that is not ok, by its room. */
export interface NotOkCheck {
  readonly id: string;
  readonly label: string;
  readonly subsystem: SubsystemId;
}

/** What the checks say. `open`: not to be judged yet. */
export interface ColumnChecks {
  readonly ok: number;
  readonly look: readonly NotOkCheck[];
  readonly stop: readonly NotOkCheck[];
  readonly open: number;
}

/** What a plan of tasks is told by besides its figures. */
export interface PlanFigures {
  readonly skill: HardestSkill;
  /** The five dearest troubles that are counted, dearest first; builds of twenty. */
  readonly risks: readonly (Named & { readonly ofTwenty: number })[];
  readonly checks: ColumnChecks;
  /** Where one may stop, in order, and what stands there then. */
  readonly stops: readonly { readonly id: string; readonly say: string; readonly stage: StageId }[];
  /** Cuts that cannot be undone. */
  readonly final: readonly { readonly task: string; readonly name: string }[];
}

/** One column of a comparison. Dollars, hours, weeks. Plain data. */
export interface ComparedColumn extends Omit<PlanFigures, 'checks'> {
  readonly kind: 'path' | 'alternative';
  /** The plan behind it: of a path, or of an alternative that is worked out as one; undefined for bands of its own. */
  readonly path: Path | undefined;
  /** Words of an alternative; undefined for a path. */
  readonly alternative: AlternativeWords | undefined;
  /** Price edition of its figures. */
  readonly edition: string;
  readonly abilities: Readonly<Record<AbilityRow, Ability>>;
  /**
   * What you still cannot do: of a path the rows that are not wholly met, with their words; of an alternative its own
   * sentence, without a row. Empty: nothing of what the rows ask.
   */
  readonly lacks: readonly { readonly row: AbilityRow | undefined; readonly say: string }[];
  readonly money: Spread;
  readonly hours: Spread;
  readonly weeksOut: Spread;
  /** Undefined for an alternative with bands of its own: no drawing of it is checked. */
  readonly checks: ColumnChecks | undefined;
  /** A year of using it, where an alternative is paid for as it is used and the parts are known. */
  readonly perYear: { readonly money: Spread; readonly hours: Spread } | undefined;
  readonly paidByUse: boolean;
  /** Dollars a year that a plan asks for besides; nothing in most. */
  readonly yearly: Band;
}

export interface AlternativeWords
  extends Pick<Alternative, 'id' | 'name' | 'means' | 'gives' | 'lacks' | 'bestFor'> {
  /** Why it is looked at before a conversion; undefined where nothing speaks for it first. */
  readonly first: string | undefined;
}

/** A column with the builds behind it. */
export interface BuiltColumn {
  readonly column: ComparedColumn;
  readonly builds: BuildsOnce;
}
