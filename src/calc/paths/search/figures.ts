import type { State } from '../../choices/state.ts';
import { quantityAt } from '../../cost/bill.ts';
import { oneOf } from '../../cost/buckets.ts';
import { addTerms, type Term } from '../../cost/columns.ts';
import type { Column } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import { parts } from '../../trade.ts';
import type { Present } from '../present.ts';
import type { Sum } from './sums.ts';
import { measuredParts } from './terms.ts';

/** A way through in figures: dollars and hours typically and in sixteen of twenty builds; weeks in sixteen of twenty. */
export interface WayFigures {
  readonly money: number;
  readonly moneyP80: number;
  readonly hours: number;
  readonly hoursP80: number;
  readonly weeksP80: number;
  /** The smallest margin that counts, in hundredths; three means three or more. */
  readonly margin: number;
}

const column = (): Column => new Float64Array(BUILDS);
const goods = column();
const money = column();
const hours = column();
const out = column();
const HUNDREDTHS = 100;

/** To the ten-thousandth of a hundredth: sums of the same hours in another order are the same hours. */
const tidy = (value: number): number => Math.round(value * 1e4) / 1e4;

/** Figures of a settled way from the sums of its options: the same cents as evaluating the path. */
export function figuresOf(
  present: Present,
  state: State,
  sums: readonly Sum[],
  perWeek: number,
  margin: number,
): WayFigures {
  fill(sums);
  addMeasured(present, state);
  const { landed } = present.ways[0]!;
  for (let build = 0; build < BUILDS; build += 1) {
    money[build]! += goods[build]! + Math.round(goods[build]! * landed[build]!);
    hours[build] = tidy(hours[build]!);
  }
  return {
    money: oneOf(money, 0.5) / HUNDREDTHS,
    moneyP80: oneOf(money, 0.8) / HUNDREDTHS,
    hours: oneOf(hours, 0.5) / HUNDREDTHS,
    hoursP80: oneOf(hours, 0.8) / HUNDREDTHS,
    weeksP80: oneOf(out, 0.8) / (HUNDREDTHS * perWeek),
    margin,
  };
}

function fill(sums: readonly Sum[]): void {
  for (const each of [goods, money, hours, out]) each.fill(0);
  const one = (column: Column): Term => ({ column, times: 1 });
  addTerms(
    goods,
    sums.map((sum) => one(sum.goods)),
  );
  addTerms(
    money,
    sums.map((sum) => one(sum.plain)),
  );
  addTerms(
    hours,
    sums.map((sum) => one(sum.hours)),
  );
  addTerms(
    out,
    sums.map((sum) => one(sum.out)),
  );
}

/** Parts that a figure of the design decides on. */
function addMeasured({ edition, machine, planned }: Present, state: State): void {
  const prices = edition.prices(machine.size);
  for (const at of measuredParts) {
    if (planned.path.owned.includes(parts[at]!.id)) continue;
    const times = quantityAt(at, state, machine);
    if (times === 0) continue;
    for (let build = 0; build < BUILDS; build += 1) goods[build]! += times * prices[at]![build]!;
  }
}
