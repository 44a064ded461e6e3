import type { Activity } from '../../src/calc/formulas/critical-path.ts';

/** Figures of one arrow of a printed network, weeks: early start and finish, late start and finish, slack. */
export interface PrintedArrow {
  readonly from: number;
  readonly to: number;
  readonly takes: number;
  readonly times: readonly [number, number, number, number, number];
}

const arrows = (...lines: readonly (readonly number[])[]): readonly PrintedArrow[] =>
  lines.map(([from, to, takes, ...times]) => ({
    from: from!,
    to: to!,
    takes: takes!,
    times: times as unknown as PrintedArrow['times'],
  }));

/** Taylor, Introduction to Management Science, ch. 8 solutions: two networks with activities on arrows. */
export const sevenArrows = arrows(
  [1, 2, 7, 0, 7, 2, 9, 2],
  [1, 3, 10, 0, 10, 0, 10, 0],
  [2, 4, 6, 7, 13, 9, 15, 2],
  [3, 4, 5, 10, 15, 10, 15, 0],
  [3, 5, 4, 10, 14, 14, 18, 4],
  [4, 5, 3, 15, 18, 15, 18, 0],
  [5, 6, 2, 18, 20, 18, 20, 0],
);

/** The next one there, with a link that takes no time. */
export const thirteenArrows = arrows(
  [1, 2, 8, 0, 8, 1, 9, 1],
  [1, 3, 10, 0, 10, 0, 10, 0],
  [1, 4, 9, 0, 9, 6, 15, 6],
  [2, 5, 6, 8, 14, 9, 15, 1],
  [2, 6, 4, 8, 12, 16, 20, 8],
  [3, 5, 5, 10, 15, 10, 15, 0],
  [4, 5, 0, 9, 9, 15, 15, 6],
  [4, 7, 7, 9, 16, 20, 27, 11],
  [5, 7, 12, 15, 27, 15, 27, 0],
  [5, 8, 15, 15, 30, 16, 31, 1],
  [6, 9, 18, 12, 30, 20, 38, 8],
  [7, 8, 4, 27, 31, 27, 31, 0],
  [8, 9, 7, 31, 38, 31, 38, 0],
);

export const WEEK = 7 * 24 * 3600;
export const nameOf = ({ from, to }: PrintedArrow): string => `${from}-${to}`;

/** An arrow follows every arrow that ends where it begins. */
export const activitiesOf = (network: readonly PrintedArrow[]): Activity[] =>
  network.map((arrow) => ({
    id: nameOf(arrow),
    duration: arrow.takes * WEEK,
    after: network.filter(({ to }) => to === arrow.from).map(nameOf),
  }));
