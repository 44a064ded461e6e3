import type * as z from 'zod/mini';
import { type FileNote, MOST_SHELF_BYTES, quoted, tooLarge } from './file-note.ts';
import { FORMAT, limits, SHELF_FORMAT, SHELF_VERSION } from './limits.ts';
import { savedShape } from './path-schema.ts';
import { parsed, readPathInFile } from './read-json.ts';
import { isGroup } from './read-own.ts';
import type { ShelfEntry, UnreadText } from './shelf.ts';
import { idShape, momentShape, originShape } from './shelf-schema.ts';

/** A path from a file, with what could not be read of it. Without an id it gets a new one. */
export interface ReadEntry extends Omit<ShelfEntry, 'id'> {
  readonly id?: string | undefined;
  readonly notes: readonly FileNote[];
}

/** What a file of paths came to. */
export interface ReadShelf {
  readonly entries: readonly ReadEntry[];
  /** Pieces of the file that hold no path: each is said, the others are read. */
  readonly damaged: readonly FileNote[];
  /** Texts that could not be read already when the file was saved; they stay in the file. */
  readonly unread: readonly UnreadText[];
  readonly saved?: string | undefined;
  readonly notes: readonly FileNote[];
}

const nothing = (note: FileNote): ReadShelf => ({ entries: [], damaged: [], unread: [], notes: [note] });

const notAShelf = (why: string): ReadShelf =>
  nothing({ kind: 'not-a-file', say: `This file holds no paths: ${why}. Nothing was changed.` });

/** Reads a file of all paths, or of a single one. Never throws, never guesses: what cannot be read is said. */
export function readShelfFile(text: string): ReadShelf {
  const refusal = tooLarge(text.length, MOST_SHELF_BYTES);
  if (refusal) return nothing(refusal);
  const { raw, fault } = parsed(text);
  if (fault) return notAShelf(fault);
  if (!isGroup(raw)) return notAShelf('it is no group of entries');
  if (raw.format === FORMAT) return readSingle(raw);
  if (raw.format !== SHELF_FORMAT) return notAShelf(`“format” is not “${SHELF_FORMAT}”`);
  if (raw.version !== SHELF_VERSION)
    return notAShelf(`it is written in version ${quoted(raw.version)}, and this site reads ${SHELF_VERSION}`);
  return Array.isArray(raw.paths) ? readAll(raw, raw.paths) : notAShelf('“paths” is missing');
}

type Group = Readonly<Record<string, unknown>>;

function readSingle(raw: Group): ReadShelf {
  const { readable, notes, path, name, note, saved } = readPathInFile(raw);
  const entries = readable ? [{ path, name, note, notes }] : [];
  return { entries, damaged: [], unread: [], saved, notes: readable ? [] : notes };
}

const FIELDS = ['format', 'version', 'saved', 'paths', 'unread'];
const ENTRY_FIELDS = ['id', 'made', 'changed', 'from', 'file'];

function readAll(raw: Group, paths: readonly unknown[]): ReadShelf {
  const notes = strangers(raw, FIELDS);
  const read = paths.slice(0, limits.paths).map(readEntry);
  if (paths.length > limits.paths)
    notes.push(leftOut(`The file holds ${paths.length} paths; the first ${limits.paths} are read. The rest`));
  return {
    entries: read.flatMap(({ entry }) => entry ?? []),
    damaged: read.flatMap(({ damaged }) => damaged ?? []),
    unread: readUnread(raw.unread, notes),
    saved: readField(raw.saved, savedShape, 'saved', notes),
    notes,
  };
}

function readEntry(raw: unknown, at: number): { entry?: ReadEntry; damaged?: FileNote } {
  const where = `Path ${at + 1} of the file`;
  if (!isGroup(raw)) return { damaged: leftOut(`${where} is ${quoted(raw)} and no path. It`) };
  const { readable, notes, path, name, note } = readPathInFile(raw.file);
  if (!readable) return { damaged: leftOut(`${where}: ${firstOf(notes)} It`) };
  const said = strangers(raw, ENTRY_FIELDS);
  const about = {
    id: readField(raw.id, idShape, 'id', said),
    made: readField(raw.made, momentShape, 'made', said),
    changed: readField(raw.changed, momentShape, 'changed', said),
    from: readField(raw.from, originShape, 'from', said),
  };
  return { entry: { ...about, path, name, note, notes: [...said, ...notes] } };
}

const firstOf = (notes: readonly FileNote[]): string =>
  notes[0]?.say.replace(' Nothing was changed.', '').replace('This file', 'it') ?? '';

/** "Path 3 of the file" was left out. */
const leftOut = (what: string): FileNote => ({ kind: 'left-out', say: `${what} was left out.` });

const strangers = (raw: Group, fields: readonly string[]): FileNote[] =>
  Object.keys(raw)
    .filter((key) => !fields.includes(key))
    .map((key) => leftOut(`${quoted(key)} is not a field of this file. It`));

function readField<Value>(
  raw: unknown,
  shape: z.ZodMiniType<Value>,
  field: string,
  notes: FileNote[],
): Value | undefined {
  if (raw === undefined) return undefined;
  const result = shape.safeParse(raw);
  if (!result.success) notes.push(leftOut(`${quoted(raw)} cannot be read as “${field}”. It`));
  return result.data;
}

function readUnread(raw: unknown, notes: FileNote[]): UnreadText[] {
  if (raw === undefined) return [];
  const all: readonly unknown[] = Array.isArray(raw) ? raw : [];
  const sound = all.filter(
    (each): each is UnreadText =>
      isGroup(each) && typeof each.id === 'string' && typeof each.text === 'string',
  );
  if (!Array.isArray(raw) || sound.length < all.length)
    notes.push(leftOut('“unread” is not a list of texts. What of it is none'));
  return sound;
}
