import { fold, WORD } from './fold.ts';

/** A run of text; `hit` where it is a word that was found. */
export interface Run {
  readonly text: string;
  readonly hit: boolean;
}

const [BEFORE, LONG] = [60, 220];

/** The part of a text around the first word found, whole words only. */
function partOf(text: string, hits: readonly number[]): string {
  const from = Math.max(0, (hits[0] ?? 0) - BEFORE);
  const start = from === 0 ? 0 : text.indexOf(' ', from) + 1;
  if (text.length - start <= LONG) return `${start > 0 ? '… ' : ''}${text.slice(start)}`;
  const end = text.lastIndexOf(' ', start + LONG);
  return `${start > 0 ? '… ' : ''}${text.slice(start, end)} …`;
}

/** A line of the text with the words found in it marked. `by` are words as they stand in the index. */
export function marked(text: string, by: readonly string[]): Run[] {
  const known = new Set(by);
  const hits = [...text.matchAll(WORD)].filter(([each]) => known.has(fold(each))).map(({ index }) => index);
  return partOf(text, hits)
    .split(new RegExp(`(${WORD.source})`, 'u'))
    .filter((each) => each !== '')
    .map((each) => ({ text: each, hit: known.has(fold(each)) }));
}
