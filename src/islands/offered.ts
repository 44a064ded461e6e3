import type { Path } from '../calc/core/path.ts';
import type { Own } from '../export/own.ts';
import { asSent, ownOf, sameOwn } from './own-part.ts';

/** What came in a link of what only its owner knows. */
let offered: Own = {};

export function setOffered(own: Own): void {
  offered = own;
}

/** What is done and measured, and what is paid: a link brings the one or the other whole, never a mixture with ours. */
const GROUPS: readonly ((own: Own) => Own)[] = [
  ({ progress }) => (progress ? { progress } : {}),
  ({ progress: _, ...prices }) => prices,
];

const isEmpty = (own: Own): boolean => Object.keys(own).length === 0;

/** The path with what the link carries where it has none of its own; whether it has another that stands in the way. */
export function withOffered(path: Path): { readonly path: Path; readonly differs: boolean } {
  const mine = ownOf(path);
  const taken = GROUPS.filter((group) => isEmpty(group(mine))).map((group) => group(offered));
  const differs = GROUPS.some((group) => {
    const [theirs, ours] = [group(offered), group(mine)];
    return !isEmpty(theirs) && !isEmpty(ours) && !sameOwn(theirs, group(asSent(mine)));
  });
  return { path: Object.assign({}, path, ...taken) as Path, differs };
}

/** The path with all that the link carries in place of its own; notes are never in a link, so they stay. */
export const takingOffered = (path: Path): Path => ({
  ...path,
  ...offered,
  ...(offered.progress && path.progress
    ? { progress: { ...offered.progress, notes: path.progress.notes } }
    : {}),
});
