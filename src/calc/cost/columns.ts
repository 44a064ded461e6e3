import type { Column } from './edition.ts';
import { BUILDS } from './strata.ts';

/** A column and how many times it counts. */
export interface Term {
  readonly column: Column;
  readonly times: number;
}

/**
 * Adds every term to the total, four columns at a time: the total is then read and written a quarter as often.
 * Whole numbers in, whole numbers out, whatever the order.
 */
export function addTerms(total: Column, terms: readonly Term[], from = 0, to = BUILDS): void {
  let at = 0;
  for (; at + 4 <= terms.length; at += 4) {
    addFour(total, terms[at]!, terms[at + 1]!, terms[at + 2]!, terms[at + 3]!, from, to);
  }
  for (; at < terms.length; at += 1) addOne(total, terms[at]!, from, to);
}

function addFour(total: Column, p: Term, q: Term, r: Term, s: Term, from: number, to: number): void {
  const { column: a, times: ta } = p;
  const { column: b, times: tb } = q;
  const { column: c, times: tc } = r;
  const { column: d, times: td } = s;
  for (let build = from; build < to; build += 1) {
    total[build]! += ta * a[build]! + tb * b[build]! + tc * c[build]! + td * d[build]!;
  }
}

function addOne(total: Column, { column, times }: Term, from: number, to: number): void {
  for (let build = from; build < to; build += 1) total[build]! += times * column[build]!;
}

const BINS = 2048;
const places = new Int32Array(BINS + 1);
const scratch = new Float64Array(BUILDS);

interface Bins {
  readonly low: number;
  readonly scale: number;
}

/** Bins of even width over the values, with the place of the first value of each in `places`. Values need only be finite. */
function binsOf(values: Column): Bins {
  let low = values[0]!;
  let high = low;
  for (let at = 1; at < values.length; at += 1) {
    const value = values[at]!;
    if (value < low) low = value;
    else if (value > high) high = value;
  }
  const scale = high > low ? (BINS - 1) / (high - low) : 0;
  places.fill(0);
  for (let at = 0; at < values.length; at += 1) places[(((values[at]! - low) * scale) | 0) + 1]! += 1;
  for (let bin = 1; bin <= BINS; bin += 1) places[bin]! += places[bin - 1]!;
  return { low, scale };
}

/** A sorted copy of a column: thrown into bins by value, then set straight by insertion. */
export function sortColumn(values: Column): Column {
  const { low, scale } = binsOf(values);
  const sorted = values.length === BUILDS ? scratch : new Float64Array(values.length);
  for (let at = 0; at < values.length; at += 1) {
    const value = values[at]!;
    sorted[places[((value - low) * scale) | 0]!++] = value;
  }
  insertionSort(sorted);
  return sorted.slice();
}

function insertionSort(values: Column): void {
  for (let at = 1; at < values.length; at += 1) {
    const value = values[at]!;
    let place = at - 1;
    while (place >= 0 && values[place]! > value) {
      values[place + 1] = values[place]!;
      place -= 1;
    }
    values[place + 1] = value;
  }
}

/** Positions of a column of builds from the highest value to the lowest, equal values as they stand. */
export function highestFirst(values: Column): Uint16Array {
  const { low, scale } = binsOf(values);
  const order = new Uint16Array(values.length);
  for (let at = values.length - 1; at >= 0; at -= 1) {
    const bin = ((values[at]! - low) * scale) | 0;
    order[order.length - 1 - places[bin]!++] = at;
  }
  for (let at = 1; at < order.length; at += 1) {
    const position = order[at]!;
    const value = values[position]!;
    let place = at - 1;
    while (place >= 0 && values[order[place]!]! < value) {
      order[place + 1] = order[place]!;
      place -= 1;
    }
    order[place + 1] = position;
  }
  return order;
}

/**
 * Quantile of a sorted column, type 7: position (n - 1) p, linear between neighbours.
 * Source: Hyndman and Fan, Sample quantiles in statistical packages, The American Statistician 50(4), 1996.
 */
export function quantile(sorted: Column | readonly number[], p: number): number {
  const place = (sorted.length - 1) * p;
  const under = Math.floor(place);
  const above = Math.min(under + 1, sorted.length - 1);
  return sorted[under]! + (place - under) * (sorted[above]! - sorted[under]!);
}
