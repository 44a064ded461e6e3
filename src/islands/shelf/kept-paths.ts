import { atom, onMount } from 'nanostores';
import type { Path } from '../../calc/core/path.ts';
import { decodePath } from '../../link/decode.ts';
import { encodePath } from '../../link/encode.ts';
import { checkedOwn, ownText } from '../kept-lines.ts';
import { forget, type Keeping, keep, namesUnder, onOtherTab, recall } from '../memory.ts';
import { ownOf } from '../own-part.ts';
import { $open, keepNow, openKept, startNew } from '../stores.ts';
import { calledAfter } from './called.ts';
import { nameWith, seeNames } from './open-path.ts';
import { freshName, type KeptRecord, MOST_PATHS, tidied } from './record.ts';
import { ids, placeOf, putRecord, recordOf, records, SHELF } from './records.ts';
import { putBack, takeAway } from './removed.ts';

/**
 * The shelf of paths, for screens that show or change it: this one and the comparison. Reading and writing the open path
 * is the business of stores.ts.
 */

export { openKept, startNew } from '../stores.ts';
export { $removed } from './removed.ts';

/** A path on the shelf. */
export interface KeptPath {
  readonly id: string;
  /** The owner's name for it, or what it is called after its answers. */
  readonly name: string;
  readonly named: boolean;
  readonly note: string;
  /** Moments, ISO 8601; a path kept by an older visit has none. */
  readonly made?: string | undefined;
  readonly changed?: string | undefined;
  readonly from?: { readonly id: string; readonly name: string } | undefined;
  readonly fragment: string;
  /** As a link has it; `wholePath` adds what only the owner knows. */
  readonly path: Path;
  /** What could not be read of it. */
  readonly unread: readonly string[];
}

/** Every kept path that can be read, the one changed last first. */
export const $shelf = atom<readonly KeptPath[]>([]);
/** Texts on the shelf that cannot be read, by their place. */
export const $damaged = atom<readonly { readonly id: string; readonly text: string }[]>([]);

function shown(id: string, record: KeptRecord): KeptPath {
  const { path, notes } = decodePath(record.fragment);
  const { name, note = '', made, changed, from, fragment } = record;
  return {
    ...{ id, note, made, changed, from, fragment, path },
    name: name ?? calledAfter(path),
    named: name !== undefined,
    unread: notes.map(({ say }) => say),
  };
}

/** Looks at the shelf again; done by itself while a screen follows it. */
export function lookAgain(): void {
  $shelf.set(records().map(({ id, record }) => shown(id, record)));
  const damaged = ids().map((id) => ({ id, text: placeOf(id).damaged }));
  $damaged.set(damaged.flatMap(({ id, text }) => (text === undefined ? [] : [{ id, text }])));
}

onMount($shelf, () => {
  lookAgain();
  const ends = [
    $open.listen(lookAgain),
    onOtherTab((name) => {
      if (name === undefined || name.startsWith(SHELF)) lookAgain();
    }),
  ];
  return () => {
    for (const end of ends) end();
  };
});

/** The id of the path that this tab has open, whether it is on the shelf or not. */
export const openId = (): string => $open.get().id;

/** Whether another path may be put on the shelf. */
export const hasRoom = (): boolean => ids().length < MOST_PATHS;

/** A kept path with what only its owner knows. */
export async function wholePath({ id, path }: KeptPath): Promise<Path> {
  const text = recall(`own/${id}`);
  if (text === undefined) return path;
  const { own } = await checkedOwn(text).catch(() => ({ own: {} }));
  return { ...path, ...own };
}

/** Puts the open path on the shelf, under a name if one is given. */
export function keepHere(name?: string): void {
  keepNow();
  if (name) rename(openId(), name);
}

function patch(id: string, fields: Pick<KeptRecord, 'name' | 'note'>): Keeping {
  const record = recordOf(id);
  if (!record) return 'refused';
  const kept = putRecord(id, { ...record, ...fields });
  if (openId() === id) seeNames();
  lookAgain();
  return kept;
}

/** Gives a path a name; an empty one calls it after its answers again. */
export const rename = (id: string, name: string): Keeping => patch(id, { name: tidied(name) });

/** Writes a note on a path; empty takes it away. */
export const annotate = (id: string, note: string): Keeping => patch(id, { note: tidied(note) });

interface Copied {
  readonly id: string;
  readonly kept: Keeping;
}

/** Copies a path with its own part and what was set aside of it. */
function copyOf(id: string, about: (called: string) => Partial<KeptRecord>): Copied | undefined {
  const record = recordOf(id);
  if (!record) return undefined;
  const copy = freshName();
  const now = new Date().toISOString();
  const { over: _, ...known } = record;
  const called = record.name ?? calledAfter(decodePath(record.fragment).path);
  for (const name of [`own/${id}`, ...namesUnder(`own/${id}/`)]) copyText(name, name.replace(id, copy));
  const kept = putRecord(copy, { ...known, ...about(called), made: now, changed: now, rev: freshName() });
  lookAgain();
  return { id: copy, kept };
}

function copyText(from: string, to: string): void {
  const text = recall(from);
  if (text !== undefined) keep(to, text);
}

/** Puts a copy beside a path. Undefined where there is no such path. */
export const duplicate = (id: string): Copied | undefined =>
  copyOf(id, (called) => ({ name: nameWith(called, '(copy)'), from: undefined }));

/** Puts a copy beside a path that remembers where it came from, and opens it. */
export function branch(id: string): Copied | undefined {
  const made = copyOf(id, (called) => ({ name: nameWith(called, '(branch)'), from: { id, name: called } }));
  if (made?.kept === 'kept') openKept(made.id);
  return made;
}

/** Takes a path and its own part off the shelf; `undoRemove` puts them back. The open one makes way for a new one. */
export function remove(id: string): void {
  takeAway(id, calledBy(id));
  if (openId() === id) startNew();
  lookAgain();
}

/** Puts what was taken away last back; false where this browser has no room for it. */
export function undoRemove(): boolean {
  const back = putBack();
  lookAgain();
  return back !== undefined;
}

function calledBy(id: string): string {
  const record = recordOf(id);
  return record
    ? (record.name ?? calledAfter(decodePath(record.fragment).path))
    : 'A text that could not be read';
}

/** Puts a path that was read from a file on the shelf, under an id that is free. */
export function putPath(id: string, path: Path, about: Partial<KeptRecord>): Keeping {
  const own = ownOf(path);
  const keptOwn = Object.keys(own).length === 0 ? 'kept' : keep(`own/${id}`, ownText(own));
  if (keptOwn !== 'kept') return keptOwn;
  const kept = putRecord(id, { ...about, fragment: encodePath(path), rev: freshName() });
  if (kept !== 'kept') forget(`own/${id}`);
  return kept;
}
