import type { Axis, FigureInput, WorkingFigure, Written } from '../../calc/working-figures/figure.ts';
import type { Units } from '../shared/format.ts';
import { roundUp } from './plot-layout.ts';

const MM_PER_INCH = 25.4;

/** "mm/min" as "in/min"; what is no length stays. */
function inInches(written: Written): Written {
  const { unit, per } = written;
  return /^mm(\/|$)/.test(unit) ? { unit: unit.replace('mm', 'in'), per: per / MM_PER_INCH } : written;
}

/** Limits become round in the new unit, and never wider. */
function inputInInches(input: FigureInput): FigureInput {
  const written = inInches(input.written);
  if (input.metricOnly || written === input.written) return input;
  const step = roundUp(input.step / MM_PER_INCH);
  const round = (steps: number): number => Number((steps * step).toPrecision(12));
  return {
    ...input,
    written,
    step,
    low: round(Math.ceil(input.low / MM_PER_INCH / step)),
    high: round(Math.floor(input.high / MM_PER_INCH / step)),
    example: input.example / MM_PER_INCH,
  };
}

const axisInInches = ({ label, written }: Axis): Axis => ({
  label: label.replace(/, mm\b/, ', in'),
  written: inInches(written),
});

/** A figure written in the reader's own units of length; what it works out stays the same. */
export function inUnits(figure: WorkingFigure, units: Units): WorkingFigure {
  if (units === 'metric') return figure;
  return {
    ...figure,
    inputs: figure.inputs.map(inputInInches),
    across: axisInInches(figure.across),
    up: axisInInches(figure.up),
    answer: (values) => {
      const answer = figure.answer(values);
      return { ...answer, rows: answer.rows.map((row) => ({ ...row, written: inInches(row.written) })) };
    },
  };
}
