import { type DecodedComparison, decodeColumns } from './comparison.ts';
import { alternativeNames, currentName, editionNames, partNames, riskNames } from './known.ts';
import { type Decoded, decodeFragment } from './read.ts';

export type { DecodedComparison } from './comparison.ts';
export type { Decoded, LinkNote } from './read.ts';

const known = {
  editions: editionNames,
  currentEdition: currentName,
  parts: new Set(partNames),
  risks: new Set(riskNames),
  alternatives: new Set(alternativeNames),
};

/** Reads a fragment against the editions and parts of this site. Never throws. */
export const decodePath = (fragment: string): Decoded => decodeFragment(fragment, known);

/** The same for a link that may hold several columns. Never throws. */
export const decodeComparison = (fragment: string): DecodedComparison => decodeColumns(fragment, known);
