import type { Column } from './edition.ts';
import { BUILDS } from './strata.ts';

/** So many are kept; an owner types a handful of rates and carriages. */
const MOST = 64;
const kept = new Map<number, Column>();

/** A figure that is the same in every build, as a column. Not to be written to. */
export function constant(value: number): Column {
  const known = kept.get(value);
  if (known) return known;
  if (kept.size >= MOST) kept.clear();
  const column = new Float64Array(BUILDS).fill(value);
  kept.set(value, column);
  return column;
}
