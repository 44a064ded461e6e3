import type { Path } from '../../core/path.ts';
import type { PriceBook } from '../../core/price-book.ts';
import { type Counts, descend } from './descent.ts';
import { Frontier } from './frontier.ts';
import type { Limit } from './limits.ts';
import { taskOf } from './task.ts';

/** Every set of so many places out of a list of a length. */
function* choose(size: number, of: number, from = 0): Generator<number[]> {
  if (size === 0) yield [];
  else
    for (let at = from; at <= of - size; at += 1)
      for (const rest of choose(size - 1, of, at + 1)) yield [at, ...rest];
}

/**
 * The smallest sets of limits that have to give way before there is any way through: all sets of the smallest size.
 * Empty where the rules alone leave none.
 */
export function* smallestRelaxed(
  path: Path,
  book: PriceBook,
  free: readonly string[],
  limits: readonly Limit[],
): Generator<Counts, Limit[][]> {
  for (let size = 1; size <= limits.length; size += 1) {
    const found: Limit[][] = [];
    for (const places of choose(size, limits.length)) {
      const left = limits.filter((_, at) => !places.includes(at));
      const any = new Frontier();
      yield* descend(taskOf(path, book, free, left), 'any', any);
      if (any.ways.length > 0) found.push(places.map((at) => limits[at]!));
    }
    if (found.length > 0) return found;
  }
  return [];
}
