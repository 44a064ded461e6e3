import type { Range } from '../core/range.ts';
import { mean } from '../cost/spread.ts';
import { BUILDS } from '../cost/strata.ts';
import { rangeOf } from './ranges.ts';
import type { Tally } from './tally.ts';

const CENTS = 100;

/** Money of one month, dollars with freight, tax, duty and trouble. */
export interface MonthRow {
  /** From one. */
  readonly number: number;
  /** Mean over the builds; the months add up to the mean of the total. */
  readonly mean: number;
  /** Everything paid up to the end of this month. */
  readonly soFar: Range;
}

/** The months up to the last in which any build still pays. */
export function monthsOf({ monthCents }: Tally): MonthRow[] {
  const last = monthCents.findLastIndex((column) => column.some((cents) => cents !== 0));
  const soFar = new Float64Array(BUILDS);
  return monthCents.slice(0, last + 1).map((column, at) => {
    for (let build = 0; build < BUILDS; build += 1) soFar[build]! += column[build]!;
    return { number: at + 1, mean: mean(column) / CENTS, soFar: rangeOf(soFar, CENTS) };
  });
}
