import type { Fact } from '../calc/facts.ts';

/** The grammar's version: the leading number of every link. It changes only when the grammar does. */
export const VERSION = '1';

export const NOT_SURE = 'not-sure';

/** Old ids and what they are called now. A row is added when an id is renamed and never taken out; an id is never used again. */
export const renamed: Readonly<Record<string, string>> = {};

/** What an id is called by now in a table of old and new ones, also where it was renamed more than once. */
export function calledIn(table: Readonly<Record<string, string>>, id: string): string {
  let now = id;
  for (let step = 0; Object.hasOwn(table, now) && step < Object.keys(table).length; step += 1)
    now = table[now]!;
  return now;
}

export const nowCalled = (id: string): string => calledIn(renamed, id);

/** What a figure is written in, for one SI unit: millimetres, turns a minute, milliamps … as people say them. */
const perUnit: Readonly<Partial<Record<Fact['show'], number>>> = {
  length: 1000,
  pitch: 1000,
  feed: 1000,
  acceleration: 1000,
  speed: 60,
  'slide-speed': 60_000,
  'surface-speed': 60,
  inductance: 1000,
  'small-current': 1000,
};

/** Links write a figure in the unit people say it in; what has none of its own here as the model keeps it. */
export const toLink = (fact: Fact, value: number): string => String(tidy(value * (perUnit[fact.show] ?? 1)));

export const fromLink = (fact: Fact, written: number): number => tidy(written / (perUnit[fact.show] ?? 1));

/** Twelve significant digits: enough for any measurement, and a value survives the way there and back. */
const tidy = (value: number): number => Number(value.toPrecision(12));
