/**
 * A planning figure: what a careful person would call low, likely and high.
 * Money bands are US dollars, time bands hours, chances fractions of one.
 */
export type Band = readonly [low: number, likely: number, high: number];

export const NOTHING: Band = [0, 0, 0];

/** The band times a factor at or above zero. */
export function scaleBand([low, likely, high]: Band, by: number): Band {
  return [low * by, likely * by, high * by];
}

/** Ends and middles added. The sum of lows is lower than any plausible total: show it only as "all the best" or "all the worst". */
export function addBands(a: Band, b: Band): Band {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** True for three finite figures in order, none below zero. */
export function isBand([low, likely, high]: Band): boolean {
  return Number.isFinite(high) && 0 <= low && low <= likely && likely <= high;
}

/**
 * Mean of the band read as a PERT estimate: (low + 4 likely + high) / 6.
 * Source: Taylor, Introduction to Management Science, ch. 8.
 */
export function pertMean([low, likely, high]: Band): number {
  return (low + 4 * likely + high) / 6;
}
