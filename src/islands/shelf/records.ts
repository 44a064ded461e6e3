import { forget, type Keeping, keep, namesUnder, recall } from '../memory.ts';
import { isLink, type KeptRecord, readRecord, written } from './record.ts';

/** The entries of the shelf in the browser's storage, one a path. There is no list beside them that two tabs could disagree on. */

export const SHELF = 'shelf/';
const nameOf = (id: string): string => SHELF + id;

/** The one path that older visits kept, until it is written again. */
const OLDER = 'path';

function olderPlace(): Place {
  const fragment = recall(OLDER);
  if (fragment === undefined) return {};
  return isLink(fragment) ? { record: { fragment, rev: OLDER } } : { damaged: fragment };
}

const isOlder = (id: string): boolean => id === OLDER && recall(nameOf(id)) === undefined;

/** What stands at a place of the shelf: a path, a text that cannot be read, or nothing. */
export interface Place {
  readonly record?: KeptRecord | undefined;
  readonly damaged?: string | undefined;
}

export function placeOf(id: string): Place {
  if (isOlder(id)) return olderPlace();
  const text = recall(nameOf(id));
  if (text === undefined) return {};
  const record = readRecord(text);
  return record ? { record } : { damaged: text };
}

/** The path at a place, where there is one that can be read. */
export const recordOf = (id: string): KeptRecord | undefined => placeOf(id).record;

/** Puts a path in its place; whoever calls has looked at what stands there. */
export function putRecord(id: string, record: KeptRecord): Keeping {
  const kept = keep(nameOf(id), written(record));
  if (kept === 'kept' && id === OLDER) forget(OLDER);
  return kept;
}

/** Every place of the shelf, also those whose text cannot be read. */
export function ids(): string[] {
  const found = namesUnder(SHELF).map((name) => name.slice(SHELF.length));
  return recall(OLDER) === undefined || found.includes(OLDER) ? found : [...found, OLDER];
}

/** The paths that can be read, the one changed last first. */
export function records(): { readonly id: string; readonly record: KeptRecord }[] {
  const all = ids().flatMap((id) => {
    const record = recordOf(id);
    return record ? [{ id, record }] : [];
  });
  return all.toSorted(
    (a, b) => compare(b.record.changed ?? '', a.record.changed ?? '') || compare(a.id, b.id),
  );
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Every name that belongs to a path: itself, its own part, what was set aside of it. */
export function namesOf(id: string): string[] {
  const own = [nameOf(id), `own/${id}`, ...namesUnder(`own/${id}/`)];
  return (id === OLDER ? [...own, OLDER] : own).filter((name) => recall(name) !== undefined);
}
