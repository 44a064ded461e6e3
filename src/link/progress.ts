import { type Progress, type ShelfMark, shelfMarks } from '../calc/core/progress.ts';
import { nowCalled } from './grammar.ts';
import { isId, readDay, readNumber, readWithin, writeDay } from './written.ts';

/**
 * Ticks, readings, hours and make-first marks as pieces of a link, only when the owner asks for it. Notes stay out: they
 * are words, and words are private. Days are written without their dashes, marks by their first letter.
 */

export const progressKeys = ['done', 'measured', 'spent', 'shelf'] as const;

export type ProgressKey = (typeof progressKeys)[number];

export const isProgressKey = (key: string): key is ProgressKey => progressKeys.some((each) => each === key);

/** The first letter, where it is free: "measured" gives way to "made" and takes the g of gauge. */
const LETTERS: Readonly<Record<ShelfMark, string>> = {
  drawing: 'd',
  made: 'm',
  measured: 'g',
  spare: 's',
  photo: 'p',
};

const tidy = (value: number): number => Number(value.toPrecision(9));

/** The same entries, each looked at; those of which nothing is left are not there. */
const each = <Entry>(group: Readonly<Record<string, Entry>>, take: (entry: Entry) => Entry | undefined) =>
  Object.fromEntries(
    Object.entries(group).flatMap(([id, entry]): [string, Entry][] => {
      const taken = take(entry);
      return taken === undefined ? [] : [[id, taken]];
    }),
  );

/** What a link says of it: without notes, figures as they are written. */
export const sentProgress = ({ done, values, spent, shelf }: Progress): Progress => ({
  done,
  values: each(values, (all) => (all.length > 0 ? all.map(tidy) : undefined)),
  spent: each(spent, tidy),
  notes: {},
  shelf: each(shelf, (marks) => (marks.length > 0 ? marks : undefined)),
});

const listed = <Entry>(group: Readonly<Record<string, Entry>>, say: (entry: Entry) => string): string =>
  Object.entries(group)
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, entry]) => `${id}:${say(entry)}`)
    .join(',');

/** The pieces that say something, by key. */
export function progressPairs(progress: Progress): [ProgressKey, string][] {
  const { done, values, spent, shelf } = sentProgress(progress);
  const pairs: [ProgressKey, string][] = [
    ['done', listed(done, writeDay)],
    ['measured', listed(values, (all) => all.join('/'))],
    ['spent', listed(spent, String)],
    ['shelf', listed(shelf, (marks) => marks.map((mark) => LETTERS[mark]).join(''))],
  ];
  return pairs.filter(([, said]) => said !== '');
}

const MOST = 400;

function valuesOf(text: string): readonly number[] | undefined {
  const all = text.split('/').map(readNumber);
  return all.length <= 20 && all.every((value) => value !== undefined) ? (all as number[]) : undefined;
}

const hoursOf = (text: string): number | undefined => readWithin(text, 0, 10_000);

function marksOf(text: string): readonly ShelfMark[] | undefined {
  const marks = [...text].map((letter) => shelfMarks.find((mark) => LETTERS[mark] === letter));
  return text !== '' && marks.every((mark) => mark !== undefined)
    ? [...new Set(marks as ShelfMark[])]
    : undefined;
}

const readers: { readonly [Key in ProgressKey]: (text: string) => unknown } = {
  done: readDay,
  measured: valuesOf,
  spent: hoursOf,
  shelf: marksOf,
};

const groupOf = { done: 'done', measured: 'values', spent: 'spent', shelf: 'shelf' } as const;

/** One piece of a link read: the group it fills, and the entries that could not be read, as they stood. */
export function readProgressPair(
  key: ProgressKey,
  value: string,
): { readonly progress: Partial<Progress>; readonly odd: readonly string[] } {
  const pieces = value.split(',').filter((piece) => piece !== '');
  const odd = pieces.slice(MOST);
  const entries = pieces.slice(0, MOST).flatMap((piece): [string, unknown][] => {
    const [written = '', said = ''] = piece.split(':');
    const id = nowCalled(written);
    const read = isId(id) ? readers[key](said) : undefined;
    if (read === undefined) odd.push(piece);
    return read === undefined ? [] : [[id, read]];
  });
  return { progress: { [groupOf[key]]: Object.fromEntries(entries) }, odd };
}
