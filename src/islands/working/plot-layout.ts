import type { FigureAnswer, WorkingFigure } from '../../calc/working-figures/figure.ts';

export const WIDTH = 360;
export const HEIGHT = 210;
/** Where the axes meet, and where they end. */
export const [LEFT, RIGHT, TOP, BOTTOM] = [46, 346, 14, 170] as const;

/** How much higher than what stands at the reader's place the picture goes. */
const ROOM = 2.5;

/** The next of 1, 2, 2.5, 5, 10 … that is not below. */
export function roundUp(value: number): number {
  if (!(value > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  return ([1, 2, 2.5, 5].find((each) => each * power >= value * (1 - 1e-9)) ?? 10) * power;
}

export interface Plot {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  /** Marks of the axes in the units that are written. */
  readonly across: readonly { readonly at: number; readonly value: number }[];
  readonly up: readonly { readonly at: number; readonly value: number }[];
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

/** Where things stand in the picture, px; curves are cut off where they climb out of it. */
export function layoutPlot({ across, up }: WorkingFigure, { curves, mark }: FigureAnswer): Plot {
  const xs = curves.flatMap(({ points }) => points.map(([x]) => x * across.written.per));
  const highest = Math.max(mark[1], ...curves.map(({ points }) => heightNear(points, mark[0])));
  const top = roundUp(highest * up.written.per * ROOM);
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  const place = (value: number) => LEFT + ((value - from) / (to - from)) * (RIGHT - LEFT);
  const height = (value: number) => BOTTOM - (value / top) * (BOTTOM - TOP);
  return {
    x: (value) => place(value * across.written.per),
    y: (value) => height(value * up.written.per),
    across: [from, (from + to) / 2, to].map((value) => ({ at: place(value), value })),
    up: [0, top / 2, top].map((value) => ({ at: height(value), value })),
  };
}
