import { atom } from 'nanostores';
import { forget, keep, recall, remember } from '../memory.ts';
import { freshName } from './record.ts';
import { namesOf, placeOf } from './records.ts';

/** A path that was taken off the shelf: its texts by the names they were kept under. */
export interface Removed {
  readonly id: string;
  readonly name: string;
  readonly texts: readonly (readonly [name: string, text: string])[];
}

const NAME = 'removed';

/** What can be put back, newest first; this tab remembers it until it is closed. */
export const $removed = atom<readonly Removed[]>(readKept());

function readKept(): readonly Removed[] {
  try {
    const kept: unknown = JSON.parse(recall(NAME, 'sessionStorage') ?? '[]');
    return Array.isArray(kept) ? (kept as Removed[]) : [];
  } catch {
    return [];
  }
}

function set(removed: readonly Removed[]): void {
  $removed.set(removed);
  remember(NAME, JSON.stringify(removed), 'sessionStorage');
}

/** Takes every text of a path away and remembers it. */
export function takeAway(id: string, name: string): void {
  const texts = namesOf(id).map((each) => [each, recall(each) ?? ''] as const);
  if (texts.length === 0) return;
  set([{ id, name, texts }, ...$removed.get()]);
  for (const [each] of texts) forget(each);
}

/** Where a path comes back to: its own place, or a free one where something stands there meanwhile. */
function freeId({ id }: Removed): string {
  const { record, damaged } = placeOf(id);
  return record || damaged !== undefined ? freshName() : id;
}

/** Puts the path taken away last back; its id, or undefined where this browser has no room for it, and then it stays remembered. */
export function putBack(): string | undefined {
  const [newest, ...older] = $removed.get();
  if (!newest) return undefined;
  const id = freeId(newest);
  const names = newest.texts.map(([name, text]) => [renamed(name, newest.id, id), text] as const);
  if (!names.every(([name, text]) => keep(name, text) === 'kept')) {
    for (const [name] of names) forget(name);
    return undefined;
  }
  set(older);
  return id;
}

/** "own/a/aside-1" of a as that of b. */
const renamed = (name: string, from: string, to: string): string => {
  if (from === to) return name;
  const at = name.split('/');
  return at.length === 1 ? `shelf/${to}` : [at[0], to, ...at.slice(2)].join('/');
};
