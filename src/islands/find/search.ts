import MiniSearch, { type Query, type SearchResult } from 'minisearch';
import { fold, wordsOf } from './fold.ts';

/** A piece of the book that can be found: its title, where it stands, its address below the base, and its text. */
export interface Piece {
  readonly title: string;
  readonly place: string;
  readonly at: string;
  readonly text: string;
}

/** What is fetched when somebody searches. */
export interface Book {
  readonly pieces: readonly Piece[];
  /** Other names in the trade, each with the word that the book uses. */
  readonly names: readonly (readonly [other: string, ours: string])[];
}

export interface Found extends Piece {
  /** Words of the index that it was found by. */
  readonly by: readonly string[];
}

export interface Finder {
  /** Best first, at most `most` of them. */
  find(asked: string, most?: number): Found[];
  /** Words of the book that are near to what was asked, for when nothing is found. */
  near(asked: string): string[];
}

/** Words that stand everywhere. */
const COMMON = new Set(
  'a an and are as at be by do does for how i in is it my of on or the to what with'.split(' '),
);

const term = (word: string): string | null => {
  const folded = fold(word);
  return COMMON.has(folded) ? null : folded;
};

const options = {
  prefix: (word: string) => word.length > 2,
  fuzzy: (word: string) => (word.length > 4 ? 0.25 : false),
  weights: { prefix: 0.4, fuzzy: 0.1 },
  boost: { title: 4, place: 0.5 },
};

const padded = (text: string): string => ` ${wordsOf(text).map(fold).join(' ')} `;

/** What was asked, or the same in the words of the book where the trade has another name for it. */
function queryOf(asked: string, names: Book['names']): Query {
  const said = padded(asked);
  const ours = names.filter(([other]) => said.includes(padded(other))).map(([, word]) => word);
  const each = (text: string) => ({ queries: [text], combineWith: 'AND' as const });
  return { combineWith: 'OR', queries: [each(asked), ...ours.map(each)] };
}

/** Makes the book searchable, a few pieces at a time so that the page stays awake; nothing of it leaves the device. */
export async function finderOf({ pieces, names }: Book): Promise<Finder> {
  const index = new MiniSearch<Piece & { id: number }>({
    fields: ['title', 'text', 'place'],
    tokenize: wordsOf,
    processTerm: term,
  });
  await index.addAllAsync(
    pieces.map((piece, id) => ({ ...piece, id })),
    { chunkSize: 60 },
  );
  // Who searches wants to read: the pages that explain come before single rows.
  const boostDocument = (id: unknown): number =>
    pieces[id as number]!.at.startsWith('book/topics/') ? 1.5 : 1;
  const found = ({ id, terms }: SearchResult): Found => ({ ...pieces[id as number]!, by: terms });
  return {
    find(asked, most = 30) {
      const all = index.search(queryOf(asked, names), { ...options, boostDocument });
      const hits = all.length > 0 ? all : index.search(asked, { ...options, boostDocument });
      return hits.slice(0, most).map(found);
    },
    near: (asked) =>
      [...new Set(index.autoSuggest(asked, { fuzzy: 0.4 }).flatMap(({ terms }) => terms))].slice(0, 5),
  };
}
