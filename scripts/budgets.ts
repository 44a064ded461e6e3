import type { Kind } from './page-kinds.ts';

/** How much a page may send, kB after brotli. What is over ends `npm run sizes -- --hold`, and with it `npm test`. */
export interface Budget {
  readonly html: number;
  readonly css: number;
  /** Script that a page needs to paint and listen. */
  readonly listen: number;
  /** With what follows by itself for the figures. */
  readonly sums: number;
}

const reading: Budget = { html: 20, css: 10, listen: 0.5, sums: 0.5 };
const screen: Budget = { html: 20, css: 15, listen: 102, sums: 270 };
/** A page of the book loads the trade only where a path is kept, for the figures of the reader's own design. */
const figure: Budget = { html: 20, css: 10, listen: 26, sums: 246 };

export const BUDGETS: Readonly<Record<Kind, Budget>> = {
  home: reading,
  lathe: screen,
  question: screen,
  'all questions': screen,
  'quick sheet': screen,
  plan: { ...screen, listen: 115, sums: 282 },
  'buy list': { ...screen, listen: 121, sums: 276 },
  bench: screen,
  'worth it': screen,
  compare: { ...screen, listen: 106, sums: 283 },
  'ways through': screen,
  calendar: screen,
  'your paths': screen,
  'book, a room': reading,
  'topic, no figure': reading,
  'topic with figures': figure,
  'find in the book': { ...reading, listen: 12, sums: 12 },
  words: reading,
  safety: reading,
  method: reading,
};

/** The sums that a page asks for by itself, by the files of `src/islands/ask`. */
export const ASKED: Partial<Readonly<Record<Kind, readonly string[]>>> = {
  question: ['choices'],
  'quick sheet': ['choices'],
  plan: ['time'],
  'buy list': ['time'],
  bench: ['time'],
  'worth it': ['choices'],
  compare: ['choices', 'columns'],
  calendar: ['time'],
  'topic with figures': ['design'],
};
