import type { FigureAnswer, WorkingFigure } from '../../calc/working-figures/figure.ts';

/** Curves are shown whole up to so many times the height at the reader's place; what climbs on is cut a little above that place. */
const [WHOLE, CUT] = [2.5, 1.6];
/** Most parts that an axis is cut into. */
const PARTS = 5;

/** The least of 1, 2, 2.5, 5, 10 … that is not below. */
export function roundUp(value: number): number {
  if (!(value > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  return ([1, 2, 2.5, 5].find((each) => each * power >= value * (1 - 1e-9)) ?? 10) * power;
}

/** The round figures from one end of an axis to the other, both ends in where they are round themselves. */
export function roundMarks(from: number, to: number): readonly number[] {
  const step = roundUp((to - from) / PARTS);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}

/** A mark of an axis: its place, percent of the picture, and its figure in the unit that is written. */
export interface AxisMark {
  readonly at: number;
  readonly value: number;
}

/** Places in the picture, percent from its left and from its top, of SI figures. */
export interface Plot {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly across: readonly AxisMark[];
  readonly up: readonly AxisMark[];
}

/** How high a curve stands nearest to a place across, between its points. */
function heightNear(points: FigureAnswer['curves'][number]['points'], x: number): number {
  const after = Math.max(
    1,
    points.findIndex(([each]) => each >= x),
  );
  const [[x0, y0], [x1, y1]] = [points[after - 1]!, points[after] ?? points[after - 1]!];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/** The top of the picture, so that the reader's place never lies flat at its foot. */
function topOf({ curves, mark }: FigureAnswer): number {
  const highest = Math.max(mark[1], ...curves.flatMap(({ points }) => points.map(([, y]) => y)));
  const here = Math.max(mark[1], ...curves.map(({ points }) => heightNear(points, mark[0])));
  return here > 0 && highest > here * WHOLE ? here * CUT : highest;
}

/** Where things stand in the picture; curves are cut off where they climb out of it. */
export function layoutPlot({ across, up }: WorkingFigure, answer: FigureAnswer): Plot {
  const xs = answer.curves.flatMap(({ points }) => points.map(([x]) => x * across.written.per));
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  const needed = topOf(answer) * up.written.per;
  const step = roundUp(needed / PARTS);
  const top = Math.max(1, Math.ceil(needed / step - 1e-9)) * step;
  const place = (value: number) => (100 * (value - from)) / (to - from);
  const height = (value: number) => 100 - (100 * value) / top;
  return {
    x: (value) => place(value * across.written.per),
    y: (value) => height(value * up.written.per),
    across: roundMarks(from, to).map((value) => ({ at: place(value), value })),
    up: roundMarks(0, top).map((value) => ({ at: height(value), value })),
  };
}
