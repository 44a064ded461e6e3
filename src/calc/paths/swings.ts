import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Difference } from '../cost/difference.ts';
import { type ChoiceSwing, choiceSwings } from './choice-swings.ts';
import { type PerKind, threeOfTotals } from './measures-of-total.ts';
import { presentOf } from './present.ts';
import { type UnknownSwing, unknownSwings } from './unknown-swings.ts';

/** What the totals hang on: choices and unknowns, never in one list. Plain data. */
export interface Swings {
  /** The totals as they are: dollars, hours, weeks out of use. */
  readonly now: PerKind<Difference>;
  readonly choices: readonly ChoiceSwing[];
  readonly unknowns: readonly UnknownSwing[];
}

/** What swings the totals of a path. Throws only on an author's mistake. */
export function swingsOf(path: Path, book: PriceBook): Swings {
  const present = presentOf(path, book);
  return {
    now: threeOfTotals(present, present.totals),
    choices: choiceSwings(present),
    unknowns: unknownSwings(present),
  };
}
