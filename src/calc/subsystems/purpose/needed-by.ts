import type { NeededBy } from '../../core/part.ts';

/** Which tasks wait for the parts of this room. */
export const neededBy: readonly NeededBy[] = [
  { tasks: ['reversible-brackets'], parts: ['clamp-bracket-stock'] },
];
