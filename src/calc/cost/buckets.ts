import type { Difference } from './difference.ts';
import type { Column } from './edition.ts';
import { BUILDS } from './strata.ts';

const BUCKETS = 512;
const counts = new Int32Array(BUCKETS);
const bucketOf = new Int32Array(BUILDS);
const held = new Float64Array(BUILDS);

/** Least and greatest of a column, left here so that nothing is made for the answer. */
let low = 0;
let high = 0;

/**
 * P10, P50 and P90 of 2,000 builds without sorting them all: thrown into 512 buckets, and only the buckets that hold
 * a wanted place are sorted. Type 7 quantiles, the same figures as sorting gives; `unit` divides them.
 */
export function threeOf(values: Column, unit: number): Difference {
  findEnds(values);
  if (!(high > low)) return { p10: low / unit, p50: low / unit, p90: low / unit };
  throwIntoBuckets(values, (BUCKETS - 0.001) / (high - low));
  return {
    p10: quantileOf(values, 0.1) / unit,
    p50: quantileOf(values, 0.5) / unit,
    p90: quantileOf(values, 0.9) / unit,
  };
}

/** One quantile of 2,000 builds, in the same way. */
export function oneOf(values: Column, p: number): number {
  findEnds(values);
  if (!(high > low)) return low;
  throwIntoBuckets(values, (BUCKETS - 0.001) / (high - low));
  return quantileOf(values, p);
}

function findEnds(values: Column): void {
  let least = values[0]!;
  let most = least;
  for (let build = 1; build < BUILDS; build += 1) {
    const value = values[build]!;
    if (value < least) least = value;
    else if (value > most) most = value;
  }
  low = least;
  high = most;
}

function throwIntoBuckets(values: Column, scale: number): void {
  counts.fill(0);
  const from = low;
  for (let build = 0; build < BUILDS; build += 1) {
    const bucket = ((values[build]! - from) * scale) | 0;
    bucketOf[build] = bucket;
    counts[bucket]! += 1;
  }
}

/** Between the two neighbouring places, which lie in one bucket or in two. */
function quantileOf(values: Column, p: number): number {
  const place = (BUILDS - 1) * p;
  const under = Math.floor(place);
  let bucket = 0;
  let before = 0;
  while (before + counts[bucket]! <= under) before += counts[bucket++]!;
  const count = hold(values, bucket);
  const first = held[under - before]!;
  if (place === under) return first;
  const next = under + 1 - before < count ? held[under + 1 - before]! : leastOf(values, bucketAfter(bucket));
  return first + (place - under) * (next - first);
}

/** The values of a bucket, sorted into `held`; how many. */
function hold(values: Column, bucket: number): number {
  let count = 0;
  for (let build = 0; build < BUILDS; build += 1) {
    if (bucketOf[build] !== bucket) continue;
    const value = values[build]!;
    let place = count;
    for (; place > 0 && held[place - 1]! > value; place -= 1) held[place] = held[place - 1]!;
    held[place] = value;
    count += 1;
  }
  return count;
}

function bucketAfter(bucket: number): number {
  let next = bucket + 1;
  while (counts[next] === 0) next += 1;
  return next;
}

function leastOf(values: Column, bucket: number): number {
  let least = Infinity;
  for (let build = 0; build < BUILDS; build += 1) {
    if (bucketOf[build] === bucket && values[build]! < least) least = values[build]!;
  }
  return least;
}
