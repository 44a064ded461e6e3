import type { Alternative } from './core/alternative.ts';
import type { Compared } from './core/compared.ts';
import type { PriceBook } from './core/price-book.ts';
import { builtColumns } from './paths/compare/built-columns.ts';
import type { ComparedColumn } from './paths/compare/column.ts';
import { type Pair, pairsOf } from './paths/compare/pairs.ts';

export { type Compared, MOST_COMPARED } from './core/compared.ts';
export type {
  AlternativeWords,
  ColumnChecks,
  ComparedColumn,
  HardestSkill,
} from './paths/compare/column.ts';
export type { Pair, PairSide } from './paths/compare/pairs.ts';
export { type Piece, piecesOf, taking } from './paths/compare/pieces.ts';
export { MOST_EXACT } from './paths/compare/shares.ts';
export { type Share, type TypicalDifference, type WhyDiffer, whyDiffer } from './paths/compare/why.ts';

/** Ways and alternatives side by side, in the same builds. Plain data. */
export interface Comparison {
  readonly columns: readonly ComparedColumn[];
  /** Every pair of columns, the earlier one first. */
  readonly pairs: readonly Pair[];
  /** Columns stand at prices of different editions, and the draws of one are not those of the other. */
  readonly editionsDiffer: boolean;
}

/**
 * One to four columns side by side: each path at the prices of its own edition, alternatives on the lathe of the first
 * path at its prices. Throws where no path is among them, on an alternative that the list does not hold, and when
 * `bookOf` does.
 */
export function comparisonOf(
  columns: readonly Compared[],
  bookOf: (edition: string) => PriceBook,
  list: readonly Alternative[],
): Comparison {
  const built = builtColumns(columns, bookOf, list);
  const editions = new Set(built.map(({ column }) => column.edition));
  return {
    columns: built.map(({ column }) => column),
    pairs: pairsOf(built),
    editionsDiffer: editions.size > 1,
  };
}
