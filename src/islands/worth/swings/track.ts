import { niceScale } from '../../shared/scale.ts';

/** Room on either side for the figures at the ends, per cent of the width. */
const ROOM = 19;
const TICKS = 5;

/** A scale across a drawing of any width: places are per cent of it. */
export interface Track {
  readonly at: (value: number) => number;
  readonly ticks: readonly number[];
}

/** A track that holds every value given, with round ticks. */
export function trackOf(values: readonly number[]): Track {
  const { from, to, ticks } = niceScale(Math.min(...values), Math.max(...values), TICKS);
  const at = (value: number): number => ROOM + ((value - from) / (to - from)) * (100 - 2 * ROOM);
  return { at, ticks };
}
