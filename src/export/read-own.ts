import type * as z from 'zod/mini';
import { nowCalled } from '../link/grammar.ts';
import { type FileNote, quoted } from './file-note.ts';
import type { Own } from './own.ts';
import { allowanceShape, currencyShape, familiesShape, ownShapes, startShape } from './path-schema.ts';
import { readProgress } from './progress.ts';

/** Ids that the private part of a path may speak of. */
export interface KnownOwn {
  readonly parts: ReadonlySet<string>;
  readonly risks: ReadonlySet<string>;
}

export const isGroup = (raw: unknown): raw is Readonly<Record<string, unknown>> =>
  typeof raw === 'object' && raw !== null && !Array.isArray(raw);

const said = { purchases: 'a purchase', sellers: 'a shop', chances: 'a chance' } as const;

const leftOut = (say: string): FileNote => ({ kind: 'left-out', say: `${say} It was left out.` });

/** The first thing that is wrong with a value: the field and what stands there. */
function wrong(error: z.core.$ZodError, raw: unknown): string {
  const issue = error.issues[0];
  if (issue?.code === 'unrecognized_keys') return `${quoted(issue.keys[0])} is not a field of it`;
  const field = issue?.path[0];
  if (field === undefined || !isGroup(raw)) return `${quoted(raw)} cannot be read`;
  const at = Object.hasOwn(raw, field) ? raw[String(field)] : undefined;
  return at === undefined
    ? `“${String(field)}” is missing`
    : `${quoted(at)} cannot be read as “${String(field)}”`;
}

/** Entries by key; each bad one is listed and left out, the others stay. */
function readEntries<Entry>(
  kind: keyof typeof ownShapes,
  raw: unknown,
  known: ReadonlySet<string> | undefined,
  notes: FileNote[],
): Readonly<Record<string, Entry>> | undefined {
  if (raw === undefined) return undefined;
  if (!isGroup(raw)) {
    notes.push(leftOut(`“${kind}” should be a group of entries and is ${quoted(raw)}.`));
    return undefined;
  }
  const shape = ownShapes[kind];
  const entries = Object.entries(raw);
  if (entries.length > shape.most)
    notes.push(
      leftOut(`“${kind}” has ${entries.length} entries; the first ${shape.most} are read, not the rest.`),
    );
  const sound = entries.slice(0, shape.most).flatMap(([written, value]): [string, Entry][] => {
    const key = nowCalled(written);
    const note = keyFault(kind, key, known) ?? entryFault(kind, key, value);
    if (note) notes.push(note);
    return note ? [] : [[key, value as Entry]];
  });
  return sound.length === 0 ? undefined : Object.fromEntries(sound);
}

function keyFault(
  kind: keyof typeof ownShapes,
  key: string,
  known: ReadonlySet<string> | undefined,
): FileNote | undefined {
  const sound = ownShapes[kind].key.safeParse(key).success && (known?.has(key) ?? true);
  if (sound) return undefined;
  if (!known) return leftOut(`${quoted(key)} cannot be the name of a shop.`);
  return {
    kind: 'unknown-id',
    say: `${quoted(key)} (${said[kind]}) is not known to this site. It was left out.`,
  };
}

function entryFault(kind: keyof typeof ownShapes, key: string, value: unknown): FileNote | undefined {
  const result = ownShapes[kind].entry.safeParse(value);
  return result.success
    ? undefined
    : leftOut(`${quoted(key)} (${said[kind]}): ${wrong(result.error, value)}.`);
}

function readCurrency(raw: unknown, notes: FileNote[]): Own['currency'] {
  if (raw === undefined) return undefined;
  const result = currencyShape.safeParse(raw);
  if (!result.success) notes.push(leftOut(`The currency: ${wrong(result.error, raw)}.`));
  return result.data;
}

/** A value that stands by itself, or none and a note when it is not what it should be. */
function readValue<Value>(
  raw: unknown,
  shape: z.ZodMiniType<Value>,
  what: string,
  notes: FileNote[],
): Value | undefined {
  if (raw === undefined) return undefined;
  const result = shape.safeParse(raw);
  if (!result.success) notes.push(leftOut(`${what.replace('%', quoted(raw))}.`));
  return result.data;
}

function readJob(raw: unknown, notes: FileNote[]): Own['progress'] {
  if (raw === undefined) return undefined;
  const { progress, notes: said } = readProgress(raw);
  notes.push(...said.map((say): FileNote => ({ kind: 'left-out', say })));
  return progress;
}

/** Reads the private part of a path from parsed JSON. Never throws, never guesses: what cannot be read is in the notes. */
export function readOwn(
  raw: unknown,
  known: KnownOwn,
): { readonly own: Own; readonly notes: readonly FileNote[] } {
  const notes: FileNote[] = [];
  const given = isGroup(raw) ? raw : {};
  const own = {
    purchases: readEntries<NonNullable<Own['purchases']>[string]>(
      'purchases',
      given.purchases,
      known.parts,
      notes,
    ),
    sellers: readEntries<NonNullable<Own['sellers']>[string]>('sellers', given.sellers, undefined, notes),
    currency: readCurrency(given.currency, notes),
    chances: readEntries<number>('chances', given.chances, known.risks, notes),
    allowance: readValue(
      given.allowance,
      allowanceShape,
      'The allowance for trouble: % is not a share between 0 and 1',
      notes,
    ),
    start: readValue(given.start, startShape, 'The day the work starts: % is not a day', notes),
    progress: readJob(given.progress, notes),
    families: readValue(
      given.families,
      familiesShape,
      'The parts made again and again: a name, a number of pieces or a time is not as it should be',
      notes,
    ),
  };
  return { own: Object.fromEntries(Object.entries(own).filter(([, value]) => value !== undefined)), notes };
}
