import { niceStep } from '../shared/scale.ts';

/** Washers of one row lie in so many columns from its left end to its right. */
export const PLACES = 24;

/** Round steps from nothing to the end of a row, at most. */
const MARKS = 4;

export interface Piled {
  /** Column of the scale, counted from the left, and row in its pile, counted from the rod. */
  readonly place: number;
  readonly row: number;
}

/** The right end of a scale that starts at nothing and holds every value of the row; one at least. */
export function rowEnd(rows: readonly (readonly number[])[]): number {
  const most = Math.max(1, ...rows.flat());
  const step = niceStep(most / MARKS);
  return Math.ceil(most / step - 1e-9) * step;
}

/** Twenty values piled on a rod from nothing to `end`; a value at the end lies in the last column. */
export function pileUp(values: readonly number[], end: number): Piled[] {
  const piles = new Map<number, number>();
  return values.map((value) => {
    const place = Math.min(PLACES - 1, Math.max(0, Math.floor((value / end) * PLACES)));
    const row = piles.get(place) ?? 0;
    piles.set(place, row + 1);
    return { place, row };
  });
}
