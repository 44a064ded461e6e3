import * as z from 'zod/mini';
import { nothingDone, type Progress, type ShelfMark, shelfMarks } from '../calc/core/progress.ts';

/** No code made at run time: the site's content security policy forbids it. */
z.config({ jitless: true });

/** How much a saved job holds; far above what a real one needs. */
export const progressLimits = { entries: 400, values: 20, note: 2000, hours: 10_000 } as const;

const { entries, values, note, hours } = progressLimits;

const isDay = (text: string): boolean => {
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
};

const day = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/), z.refine(isDay));
const id = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/), z.maxLength(60));

/** One entry of each part of a job's progress, so that a bad one does not take the others with it. */
export const progressShapes = {
  done: day,
  values: z.array(z.number()).check(z.maxLength(values)),
  spent: z.number().check(z.minimum(0), z.maximum(hours)),
  notes: z.string().check(z.maxLength(note)),
  shelf: z.array(z.enum(shelfMarks)).check(z.maxLength(shelfMarks.length)),
} as const;

type Kind = keyof Progress & keyof typeof progressShapes;

const wants: Readonly<Record<Kind, string>> = {
  done: 'a day such as 2027-03-01',
  values: 'a list of numbers',
  spent: 'hours from nought upwards',
  notes: `text of at most ${note} characters`,
  shelf: `any of ${shelfMarks.join(', ')}`,
};

const isGroup = (raw: unknown): raw is Readonly<Record<string, unknown>> =>
  typeof raw === 'object' && raw !== null && !Array.isArray(raw);

/** Ticks, values, hours, notes and marks in alphabetical order, so that the same job gives the same file. Empty groups are left out. */
export function progressToFile(progress: Progress): Record<string, unknown> {
  const kinds = Object.keys(progressShapes) as Kind[];
  const groups = kinds.map((kind): [Kind, Record<string, unknown>] => [
    kind,
    Object.fromEntries(Object.entries(progress[kind]).sort(([a], [b]) => (a < b ? -1 : 1))),
  ]);
  return Object.fromEntries(groups.filter(([, group]) => Object.keys(group).length > 0));
}

function readGroup(kind: Kind, raw: unknown, notes: string[]): Record<string, unknown> {
  if (raw === undefined) return {};
  if (!isGroup(raw)) {
    notes.push(`“${kind}” is not a group of entries. It was left out.`);
    return {};
  }
  const given = Object.entries(raw);
  if (given.length > entries)
    notes.push(`“${kind}” has ${given.length} entries; the first ${entries} were read.`);
  return Object.fromEntries(
    given.slice(0, entries).filter(([key, value]) => {
      const sound = id.safeParse(key).success && progressShapes[kind].safeParse(value).success;
      if (!sound) notes.push(`“${key.slice(0, 60)}” in “${kind}” is not ${wants[kind]}. It was left out.`);
      return sound;
    }),
  );
}

/** Where the same mark stands twice it counts once. */
const eachOnce = (shelf: Record<string, unknown>): Progress['shelf'] =>
  Object.fromEntries(
    Object.entries(shelf).map(([key, marks]) => [key, [...new Set(marks as readonly ShelfMark[])]]),
  );

/**
 * Reads the progress of a job from parsed JSON. Never throws, never guesses: what cannot be read is said and left out.
 * Ids that this site does not know are kept, because done stays done.
 */
export function readProgress(raw: unknown): {
  readonly progress: Progress;
  readonly notes: readonly string[];
} {
  if (raw === undefined) return { progress: nothingDone, notes: [] };
  if (!isGroup(raw))
    return { progress: nothingDone, notes: ['The progress of the job cannot be read. It was left out.'] };
  const notes = Object.keys(raw)
    .filter((key) => !Object.hasOwn(progressShapes, key))
    .map((key) => `“${key.slice(0, 60)}” is no part of a job’s progress. It was left out.`);
  const read = <Entry>(kind: Kind) => readGroup(kind, raw[kind], notes) as Record<string, Entry>;
  return {
    progress: {
      done: read<string>('done'),
      values: read<readonly number[]>('values'),
      spent: read<number>('spent'),
      notes: read<string>('notes'),
      shelf: eachOnce(read('shelf')),
    },
    notes,
  };
}
