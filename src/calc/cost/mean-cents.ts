import type { MoneyParts } from '../report.ts';
import type { Totals } from './builds.ts';
import type { Column } from './edition.ts';

function sum(...columns: readonly Column[]): number {
  let total = 0;
  for (const column of columns) for (let at = 0; at < column.length; at += 1) total += column[at]!;
  return total;
}

/**
 * Shares rounded to whole numbers that add up to the rounded sum: each is rounded down, and the units that are then
 * missing go to the largest remainders (Hamilton's method, as seats in a parliament are shared out).
 */
export function largestRemainder(shares: readonly number[]): number[] {
  const whole = shares.map(Math.floor);
  const rest = shares.map((share, at) => share - whole[at]!);
  const missing = Math.round(shares.reduce((a, b) => a + b, 0)) - whole.reduce((a, b) => a + b, 0);
  const first = rest.map((_, at) => at).sort((a, b) => rest[b]! - rest[a]! || a - b);
  for (const at of first.slice(0, missing)) whole[at]! += 1;
  return whole;
}

/** The means of the builds in whole cents that add up; `committed` is a part of goods and landed. */
export function meanCents(totals: Totals, committed: number): MoneyParts['cents'] {
  const builds = totals.money.length;
  const [goods = 0, landed = 0, trouble = 0, credit = 0] = largestRemainder([
    sum(totals.goods, totals.local) / builds,
    sum(totals.landed) / builds,
    sum(totals.troubleMoney) / builds,
    sum(totals.credits) / builds,
  ]);
  const total = goods + landed + trouble + credit;
  return { goods, landed, trouble, credit, total, committed, stillToBuy: goods + landed - committed };
}
