import { parts } from '../calc/trade.ts';
import { currentEdition, editions } from '../content/edition.ts';
import { type Decoded, decodeFragment } from './read.ts';

export type { Decoded, LinkNote } from './read.ts';

const known = {
  editions: editions.map((book) => book.edition),
  currentEdition: currentEdition.edition,
  parts: new Set(parts.map((part) => part.id)),
};

/** Reads a fragment against the editions and parts of this site. Never throws. */
export const decodePath = (fragment: string): Decoded => decodeFragment(fragment, known);
