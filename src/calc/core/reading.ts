import type { Condition } from './condition.ts';
import type { Unit } from './quantity.ts';

/** How a reading is typed and shown; the model keeps SI (temperatures in °C). */
export type ReadingShow =
  | 'length'
  | 'force'
  | 'resistance'
  | 'voltage'
  | 'share'
  | 'count'
  | 'seconds'
  | 'temperature';

/** Where to look when a reading lies outside its limit: task and risk ids, and one sentence. */
export interface Pointer {
  readonly tasks: readonly string[];
  readonly risks: readonly string[];
  readonly say: string;
}

/**
 * A figure that is measured in the test of a task and written down. Judged where it has a limit; without one it is
 * noted, because something later is compared with it. Limits are common practice, no source, unless a task says more.
 */
export interface Reading {
  /** Permanent, unique over all readings: values are kept under it. */
  readonly id: string;
  readonly task: string;
  /** Short, for a sheet with a blank behind it: "Play of the carriage". */
  readonly what: string;
  /** Where and how: "at three places, from both sides". */
  readonly where?: string;
  readonly unit: Unit;
  readonly show: ReadingShow;
  readonly atMost?: number;
  readonly atLeast?: number;
  /** As good as a careful amateur gets it; never a condition. */
  readonly good?: number;
  /** How many values are written down; one when missing. */
  readonly places?: number;
  /** List A: the survey before anything is bought. List B: the proof of the finished machine. */
  readonly list?: 'survey' | 'proof';
  /** Only on these paths. */
  readonly when?: Condition;
  readonly points: Pointer;
}

export type Judgement = 'good' | 'within' | 'outside' | 'noted';

/** Metres of so many millimetres, without a crumb of binary left over. */
export const mm = (millimetres: number): number => Number((millimetres / 1000).toPrecision(12));

/** How a value stands against its limit. Sign counts only where there is a lower limit. */
export function judge({ atMost, atLeast, good }: Reading, value: number): Judgement {
  const size = atLeast === undefined ? Math.abs(value) : value;
  if (atMost !== undefined && size > atMost) return 'outside';
  if (atLeast !== undefined && size < atLeast) return 'outside';
  if (good !== undefined && size <= good) return 'good';
  return atMost === undefined && atLeast === undefined ? 'noted' : 'within';
}

/** The worst judgement of several values; undefined when nothing is written down yet. */
export function judgeAll(reading: Reading, values: readonly number[]): Judgement | undefined {
  const found = values.map((value) => judge(reading, value));
  return (['outside', 'within', 'noted', 'good'] as const).find((each) => found.includes(each));
}
