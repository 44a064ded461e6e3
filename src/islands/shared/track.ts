import { niceScale } from './scale.ts';

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

/** Words nearer to each other than this would run together, per cent. */
const CLEAR = 17;

/** The ticks that have room for their words beside the name of the centre and beside each other. */
export function namedTicks({ at, ticks }: Track, centre: number, centreName: string): number[] {
  const taken: number[] = [];
  const room = 9 + centreName.length;
  return ticks.filter((tick) => {
    const place = at(tick);
    const free =
      Math.abs(place - at(centre)) > room && taken.every((other) => Math.abs(place - other) > CLEAR);
    if (free) taken.push(place);
    return free;
  });
}
