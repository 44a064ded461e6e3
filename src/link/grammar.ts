import type { Fact } from '../calc/facts.ts';

/** The grammar's version: the leading number of every link. It changes only when the grammar does. */
export const VERSION = '1';

export const NOT_SURE = 'not-sure';

/** Old ids and what they are called now. A row is added when an id is renamed and never taken out; an id is never used again. */
export const renamed: Readonly<Record<string, string>> = {};

export const nowCalled = (id: string): string => (Object.hasOwn(renamed, id) ? renamed[id]! : id);

const perUnit: Readonly<Partial<Record<Fact['show'], number>>> = { length: 1000, pitch: 1000, speed: 60 };

/** Links write lengths in millimetres and speeds in turns a minute, everything else as the model keeps it. */
export const toLink = (fact: Fact, value: number): string => String(tidy(value * (perUnit[fact.show] ?? 1)));

export const fromLink = (fact: Fact, written: number): number => tidy(written / (perUnit[fact.show] ?? 1));

/** Twelve significant digits: enough for any measurement, and a value survives the way there and back. */
const tidy = (value: number): number => Number(value.toPrecision(12));
