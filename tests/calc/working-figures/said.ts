// What the tests of working figures share.
import fc from 'fast-check';
import type { Values, WorkingFigure } from '../../../src/calc/working-figures/figure.ts';
import { rows } from '../../published/rows.ts';

export const RUNS = { numRuns: 100 };

/** What a row of the table says, in the unit that it is written in. */
export function said(figure: WorkingFigure, id: string, values: Values): number {
  const row = figure.answer(values).rows.find((each) => each.id === id)!;
  return row.value * row.written.per;
}

export const within = (figure: WorkingFigure) =>
  fc.record(
    Object.fromEntries(
      figure.inputs.map(({ id, low, high, written }) => [
        id,
        fc.double({ min: low / written.per, max: high / written.per, noNaN: true }),
      ]),
    ),
  );

/** Printed rows of a formula whose inputs a figure can take. */
export const printed = (formula: string, fits: (inputs: Readonly<Record<string, unknown>>) => boolean) =>
  rows.filter((row) => row.formula === formula && fits(row.inputs));
