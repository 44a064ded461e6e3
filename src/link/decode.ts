import { currentName, editionNames, partNames } from './known.ts';
import { type Decoded, decodeFragment } from './read.ts';

export type { Decoded, LinkNote } from './read.ts';

const known = {
  editions: editionNames,
  currentEdition: currentName,
  parts: new Set(partNames),
};

/** Reads a fragment against the editions and parts of this site. Never throws. */
export const decodePath = (fragment: string): Decoded => decodeFragment(fragment, known);
