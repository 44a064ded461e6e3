/** What names a source: a formula or a published row. */
export interface Cited {
  readonly formula: string;
  readonly ref: string;
  readonly at: string;
  /** A formula rests on it, or a printed figure in it was read there or quoted from memory. */
  readonly use: 'law' | 'seen' | 'memory';
}

export interface Work {
  readonly ref: string;
  /** Formulas that rest on it or are checked against it, each once, in the order met. */
  readonly formulas: readonly string[];
  /** Printed figures from it that ours are held against. */
  readonly seen: number;
  readonly memory: number;
}

export interface Statement {
  readonly text: string;
  /** Topic pages that make it. */
  readonly topics: readonly string[];
}

const OWN = /^(plain |common practice|standard texts)/i;

/** False for what no work prints: plain arithmetic, common practice, the standard texts of a subject. */
export const isPrinted = (ref: string): boolean => !OWN.test(ref);

const PLACE_IN_WORK =
  /, (module m\d+|chapter \d+|ball screws|formulas for \w+|instructor['’]s solutions)$|; .* prints the same$/;

/** The work alone: chapters and modules of one book are one work. */
const workOf = (ref: string): string => ref.replace(PLACE_IN_WORK, '');

/** The same work, however its commas and apostrophes are set. */
const keyOf = (ref: string): string =>
  ref.toLowerCase().replaceAll('’', "'").replace(/[,.]/g, '').replace(/\s+/g, ' ').trim();

const grouped = <T>(list: readonly T[], key: (item: T) => string): T[][] => {
  const groups = new Map<string, T[]>();
  for (const item of list) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return [...groups.values()];
};

const byName = (a: string, b: string): number => a.localeCompare(b, 'en-GB');

/** Every work once, by name, with what rests on it. */
export const worksOf = (cited: readonly Cited[]): Work[] =>
  grouped(cited, ({ ref }) => keyOf(workOf(ref)))
    .map((group) => ({
      ref: workOf(group[0]!.ref),
      formulas: [...new Set(group.map(({ formula }) => formula))],
      seen: group.filter(({ use }) => use === 'seen').length,
      memory: group.filter(({ use }) => use === 'memory').length,
    }))
    .sort((a, b) => byName(a.ref, b.ref));

/** What the topic pages say of their sources, each statement once, in the order of the pages. */
export const statementsOf = (pages: readonly { id: string; sources: readonly string[] }[]): Statement[] =>
  grouped(
    pages.flatMap(({ id, sources }) => sources.map((text) => ({ id, text }))),
    ({ text }) => keyOf(text),
  ).map((group) => ({ text: group[0]!.text, topics: [...new Set(group.map(({ id }) => id))] }));

/** "3 figures read there, 1 quoted from memory"; an empty text where it prints none of ours. */
export function figuresText({ seen, memory }: Work): string {
  const count = (n: number) => (n === 1 ? '1 figure' : `${n} figures`);
  if (seen > 0 && memory > 0) return `${count(seen)} read there, ${memory} quoted from memory`;
  if (seen > 0) return `${count(seen)} read there`;
  return memory > 0 ? `${count(memory)} quoted from memory` : '';
}
