import type { State } from '../../choices/state.ts';
import { oneOf } from '../../cost/buckets.ts';
import { fillTotals, newTotals, resolve } from '../../cost/builds.ts';
import type { Present } from '../present.ts';

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

const HUNDREDTHS = 100;

/** Figures of a settled way: the sums that evaluating the path makes, to the cent. */
export function figuresOf(present: Present, state: State, perWeek: number, margin: number): WayFigures {
  const totals = newTotals();
  const { machine, planned, edition } = present;
  fillTotals(totals, resolve(state, machine, planned.path, edition), edition);
  return {
    money: oneOf(totals.money, 0.5) / HUNDREDTHS,
    moneyP80: oneOf(totals.money, 0.8) / HUNDREDTHS,
    hours: oneOf(totals.hours, 0.5) / HUNDREDTHS,
    hoursP80: oneOf(totals.hours, 0.8) / HUNDREDTHS,
    weeksP80: oneOf(totals.hoursOut, 0.8) / (HUNDREDTHS * perWeek),
    margin,
  };
}
