import {
  type Carried,
  carriedBy,
  cheapestWay,
  countWays,
  type SearchProgress,
  searchWays,
  type Wanted,
  type WayFigures,
  type WaysThrough,
} from '../../calc/choosing.ts';
import type { Path } from '../../calc/core/path.ts';
import type { PriceBook } from '../../calc/core/price-book.ts';
import { currentEdition, editionByName } from '../../content/edition.ts';

/** What is asked, by name: which questions carry most, how many ways they make, which ways are best. */
export interface Asked {
  readonly carried: { readonly path: Path };
  readonly count: { readonly path: Path; readonly free: readonly string[] };
  readonly search: { readonly path: Path; readonly wanted: Wanted };
}

/** Where a search sets out from. */
export interface Standing {
  readonly carried: readonly Carried[];
  /** The plan as it is, every open question answered as it assumes, in the figures of a way. */
  readonly plan: WayFigures | undefined;
}

export interface Told {
  readonly carried: Standing;
  readonly count: number;
  readonly search: WaysThrough;
}

export type JobName = keyof Asked;

const bookOf = ({ edition }: Path): PriceBook => editionByName(edition) ?? currentEdition;

const standingOf = (path: Path): Standing => ({
  carried: carriedBy(path, bookOf(path)),
  plan: cheapestWay(path, bookOf(path), { free: [], limits: [] })?.figures,
});

/** The fields of every kind of job. */
type Any = Asked['carried'] & Partial<Asked['count'] & Asked['search']>;

/** Goes to work on a job step by step; whoever asked may stop between two steps. Only a search has more than one. */
export function* stepsOf<Name extends JobName>(
  name: Name,
  asked: Asked[Name],
): Generator<SearchProgress, unknown> {
  const { path, free = [], wanted } = asked as Any;
  if (wanted) return yield* searchWays(path, bookOf(path), wanted);
  return name === 'count' ? countWays(path, bookOf(path), free) : standingOf(path);
}
