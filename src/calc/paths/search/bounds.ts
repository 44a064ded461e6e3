import type { Column } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';

const BUCKETS = 4096;
const counts = new Int32Array(BUCKETS);
/** Builds at and above the place that a quantile at 0.8 begins with. */
const TOP_FIFTH = BUILDS - Math.floor((BUILDS - 1) * 0.8);
const HALF = Math.floor((BUILDS - 1) * 0.5);

/** Where values are thrown into buckets: fixed for a search, so that no pass is spent on finding the ends. */
export interface Scale {
  readonly low: number;
  readonly perUnit: number;
}

/** A scale from the least value of a column up to so many times its greatest. */
export function scaleFor(values: Column, upTo: number): Scale {
  let low = values[0]!;
  let high = low;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  const width = Math.max(1, high * upTo - low);
  return { low, perUnit: (BUCKETS - 1) / width };
}

/** A figure that the median of a column does not lie under: the lower edge of its bucket. */
export function medianAtLeast(values: Column, { low, perUnit }: Scale): number {
  counts.fill(0);
  for (let build = 0; build < BUILDS; build += 1) {
    const bucket = ((values[build]! - low) * perUnit) | 0;
    counts[bucket < 0 ? 0 : bucket >= BUCKETS ? BUCKETS - 1 : bucket]! += 1;
  }
  let bucket = 0;
  let before = counts[0]!;
  while (before <= HALF) before += counts[++bucket]!;
  return bucket === 0 ? Number.NEGATIVE_INFINITY : low + bucket / perUnit - 1e-6;
}

/** Whether sixteen of twenty builds cannot keep to a limit: told by counting, as soon as too many lie above. */
export function breaks(values: Column, limit: number): boolean {
  let above = 0;
  for (let build = 0; build < BUILDS; build += 1) if (values[build]! > limit) above += 1;
  return above >= TOP_FIFTH;
}

/** to = from + plus − minus in every build. */
export function shift(to: Column, from: Column, plus: Column, minus: Column): void {
  for (let build = 0; build < BUILDS; build += 1) to[build] = from[build]! + plus[build]! - minus[build]!;
}
