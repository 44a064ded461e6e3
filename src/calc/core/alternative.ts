import type { Band } from './band.ts';
import type { Condition } from './condition.ts';
import type { Skill } from './decision.ts';
import type { Path } from './path.ts';

/** What an answer to the same wish can do: wholly, in part, or not, with the words for it. */
export interface Ability {
  readonly can: 'yes' | 'partly' | 'no';
  readonly say: string;
}

/** The rows in which a conversion and everything else are compared. */
export const abilityRows = ['threads', 'profiles', 'batches', 'handUse', 'reversible'] as const;

/** The owner's own plan among the alternatives: its id in the order of the columns. */
export const CONVERSION = 'conversion';

export type AbilityRow = (typeof abilityRows)[number];

/** Something that may go wrong with it. Chance as fractions of one; dollars and hours if it does; judgement. */
export interface AlternativeRisk {
  readonly id: string;
  readonly name: string;
  readonly chance: Band;
  readonly money: Band;
  readonly hours: Band;
}

/** Paid once: dollars, hours of work, weeks in which the lathe cannot be used. */
export interface OnceBands {
  readonly money: Band;
  readonly hours: Band;
  readonly weeksOut: Band;
  /** Goods from a shop: freight, tax and duty come on top. Otherwise they are in the band, or there are none. */
  readonly freighted: boolean;
}

/** Paid for as it is used: dollars a month, dollars and hours for each batch, dollars for each piece. */
export interface UseBands {
  readonly perMonth?: Band;
  readonly perBatch?: Band;
  readonly hoursPerBatch?: Band;
  readonly perPiece?: Band;
  /** Each piece of a batch of more than ten. */
  readonly perPieceInBatch?: Band;
}

/** An answer to the same wish that is not this owner's conversion. Planning figures from memory of the trade. */
export interface Alternative {
  /** kebab-case, permanent. */
  readonly id: string;
  readonly name: string;
  /** What it is, one or two sentences. */
  readonly means: string;
  readonly gives: string;
  readonly lacks: string;
  /** Who does best with it. */
  readonly bestFor: string;
  readonly abilities: Readonly<Record<AbilityRow, Ability>>;
  readonly skill: Skill;
  readonly risks: readonly AlternativeRisk[];
  /** Bands of its own; or a path that is worked out on the owner's lathe like any other. */
  readonly costs: { readonly once: OnceBands; readonly use?: UseBands } | { readonly path: Path };
  /** Of the hours that a conversion saves a year, the share that this saves too; missing: nobody can say. */
  readonly saves?: Band;
  /** When it is looked at first, and why, in words that follow "because". */
  readonly firstWhen?: readonly { readonly when: Condition; readonly why: string }[];
}
