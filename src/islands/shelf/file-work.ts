import type { Path } from '../../calc/core/path.ts';
import { MOST_SHELF_BYTES } from '../../export/file-note.ts';
import { readFileText } from '../../export/file-text.ts';
import { type ReadEntry, readShelfFile } from '../../export/read-shelf.ts';
import { type ShelfEntry, shelfFile, type UnreadText } from '../../export/shelf.ts';
import { encodePath } from '../../link/encode.ts';
import { checkedOwn } from '../kept-lines.ts';
import { namesUnder, recall } from '../memory.ts';
import { ownOf, sameOwn } from '../own-part.ts';
import { $damaged, $shelf, type KeptPath, lookAgain, putPath, wholePath } from './kept-paths.ts';
import { freshName, MOST_PATHS } from './record.ts';
import { ids } from './records.ts';

/** The shelf into a file and out of one, with the checks of what is read; the page loads it when a file is asked for. */

async function entryOf(kept: KeptPath): Promise<ShelfEntry> {
  const { id, named, name, note, made, changed, from } = kept;
  const path = await wholePath(kept);
  return { id, path, name: named ? name : undefined, note: note || undefined, made, changed, from };
}

/** What stands on this device about a path and could not be read in whole, as it stands. */
async function unreadOf({ id, unread, fragment }: KeptPath): Promise<UnreadText[]> {
  const own = recall(`own/${id}`);
  const isSound = own === undefined || (await checkedOwn(own).catch(() => undefined))?.notes.length === 0;
  const aside = namesUnder(`own/${id}/`).flatMap((name) => recall(name) ?? []);
  const texts = [...(unread.length > 0 ? [fragment] : []), ...(isSound ? [] : [own ?? '']), ...aside];
  return texts.map((text) => ({ id, text }));
}

/** All paths of this device as the text of one file, and what could not be read of them beside; `open` is not kept yet. */
export async function wholeShelf(saved: string, open?: ShelfEntry): Promise<{ text: string; count: number }> {
  lookAgain();
  const kept = await Promise.all($shelf.get().map(entryOf));
  const unread = (await Promise.all($shelf.get().map(unreadOf))).flat();
  const entries = open ? [...kept, open] : kept;
  const text = shelfFile(entries, { saved, unread: [...$damaged.get(), ...unread] });
  return { text, count: entries.length };
}

/** What became of a file that was brought in; names of paths. */
export interface BroughtIn {
  readonly added: readonly string[];
  readonly already: readonly string[];
  /** Paths for which there was no room. */
  readonly without: readonly string[];
  /** What could not be read, or was read otherwise than it stands. */
  readonly notes: readonly string[];
}

const saysSame = (entry: ReadEntry, path: Path, { named, name, note }: KeptPath, other: Path): boolean =>
  encodePath(path) === encodePath(other) &&
  sameOwn(ownOf(path), ownOf(other)) &&
  (entry.name ?? '') === (named ? name : '') &&
  (entry.note ?? '') === note;

/** Whether a path of a file is on the shelf already: under its id, or under another where something else has that id. */
async function isThere(entry: ReadEntry): Promise<boolean> {
  const taken = $shelf.get().some(({ id }) => id === entry.id);
  const rivals = taken || !entry.id ? $shelf.get() : [];
  for (const kept of rivals) if (saysSame(entry, entry.path, kept, await wholePath(kept))) return true;
  return false;
}

function put(entry: ReadEntry): boolean {
  if (ids().length >= MOST_PATHS) return false;
  const { id, path, name, note, made, changed, from } = entry;
  const free = id && !ids().includes(id) ? id : freshName();
  return putPath(free, path, { name, note, made, changed, from }) === 'kept';
}

const calledIn = (entry: ReadEntry, at: number): string => entry.name ?? `Path ${at + 1} of the file`;

/** Adds the paths of a file to the shelf. Nothing that is there is written over. */
export async function bringIn(file: Blob): Promise<BroughtIn> {
  const { text, notes } = await readFileText(file, MOST_SHELF_BYTES);
  if (text === undefined) return { added: [], already: [], without: [], notes: notes.map(({ say }) => say) };
  const read = readShelfFile(text);
  const came = { added: [] as string[], already: [] as string[], without: [] as string[] };
  for (const [at, entry] of read.entries.entries()) {
    lookAgain();
    const where = (await isThere(entry)) ? came.already : put(entry) ? came.added : came.without;
    where.push(calledIn(entry, at));
  }
  lookAgain();
  const ofEntries = read.entries.flatMap((entry, at) =>
    entry.notes.map(({ say }) => `${calledIn(entry, at)}: ${say}`),
  );
  const said = [...notes, ...read.notes, ...read.damaged].map(({ say }) => say);
  const kept = read.unread.length;
  const unread =
    kept > 0
      ? [`${kept} of its texts could not be read already when it was saved. Keep the file: they stay in it.`]
      : [];
  return { ...came, notes: [...said, ...ofEntries, ...unread] };
}
