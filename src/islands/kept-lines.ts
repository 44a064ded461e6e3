import { atom } from 'nanostores';
import type { FileNote } from '../export/file-note.ts';
import type { Own } from '../export/own.ts';
import { keep, recall } from './memory.ts';
import { dropSetAside, findSetAside, setAside } from './set-aside.ts';

/**
 * What the owner has typed about purchases, sellers, currency, chances, allowance and start: kept on this device under the
 * key of its path, never in the link unless asked for. Storage only remembers; a file is the safe copy.
 */
export const $own = atom<Own>({});

/** What this device does, refuses or could not read, for the owner to see. Kinds are unique. */
export const $ownNotes = atom<readonly { readonly kind: string; readonly say: string }[]>([]);

const VERSION = 1;
const nameOf = (key: string): string => `own/${key}`;

type Change = (own: Own) => Own;

let name = nameOf('path');
/** Changes made while the kept text is still being read. */
let early: Change[] | undefined;
let opening: Promise<void> | undefined;
/** Which opening is the newest: an older one that is still reading must not come up any more. */
let turn = 0;

/**
 * Takes up what this device keeps for a path. It may be called again with another key; changes made meanwhile are put on top. Never rejects: what cannot be read is set aside and said.
 */
export function openOwn(key: string): Promise<void> {
  if (!opening || name !== nameOf(key)) opening = open(nameOf(key));
  return opening;
}

async function open(to: string): Promise<void> {
  turn += 1;
  const mine = turn;
  name = to;
  early = [];
  $own.set({});
  $ownNotes.set([]);
  findSetAside(to);
  const own = await readKept(recall(to));
  if (mine !== turn) return;
  const changes = early ?? [];
  early = undefined;
  opening = undefined;
  $own.set(changes.reduce((all, change) => change(all), own));
  if (changes.length > 0) write();
}

const FULL =
  'This browser has no more room for this site. Your latest quotes and orders are on screen only: save them as a file.';
const REFUSED =
  'This browser keeps nothing for this page. Quotes and orders last until it is closed: save them as a file.';
const UNREADABLE = 'What this device kept about your quotes and orders could not be read in whole.';
const ASIDE = 'The text as it was is set aside: save it as a file.';
const ASIDE_HERE = 'The text as it was is in hand until this page is closed: save it as a file now.';

/** Reads a kept text; the checks are loaded only where there is something to read. */
async function readKept(text: string | undefined): Promise<Own> {
  if (text === undefined) return {};
  const { own, notes } = await checkedOwn(text).catch(() => ({ own: {}, notes: [NOT_CHECKED] }));
  if (notes.length === 0) return own;
  const aside = setAside(name, text) ? ASIDE : ASIDE_HERE;
  say('own-damaged', [UNREADABLE, ...notes.map((note) => note.say), aside].join(' '));
  return own;
}

const NOT_CHECKED: FileNote = { kind: 'not-a-file', say: 'It is not what this site writes.' };

/** Reads a kept text with its checks. Rejects where it is no JSON. */
export async function checkedOwn(text: string): Promise<{ own: Own; notes: readonly FileNote[] }> {
  const kept: unknown = JSON.parse(text);
  const [{ isGroup, readOwn }, { knownOwn }] = await Promise.all([
    import('../export/read-own.ts'),
    import('../export/known-own.ts'),
  ]);
  if (!isGroup(kept) || kept.version !== VERSION || !isGroup(kept.own))
    return { own: {}, notes: [NOT_CHECKED] };
  return readOwn(kept.own, knownOwn);
}

function say(kind: string, text: string): void {
  $ownNotes.set([...$ownNotes.get().filter((note) => note.kind !== kind), { kind, say: text }]);
}

/** Takes a notice off the screen. */
export function dismissOwn(kind: string): void {
  $ownNotes.set($ownNotes.get().filter((note) => note.kind !== kind));
}

/** Throws away the texts that could not be read, once they are saved or not wanted. */
export function dropDamaged(): void {
  dropSetAside(name);
  dismissOwn('own-damaged');
}

/** Changes what is kept. What comes while the kept text is still being read is put on top of it. */
export function changeOwn(by: Change): void {
  early?.push(by);
  $own.set(by($own.get()));
  if (!early) write();
}

/**
 * From now on what is in hand belongs to another path, under which it is kept; what stood under the first key stays. While
 * it is still being read the text itself goes over.
 */
export function moveOwn(key: string): void {
  const text = early && recall(name);
  name = nameOf(key);
  if (text !== undefined) keep(name, text);
  else if (!early && Object.keys($own.get()).length > 0) write();
}

/** The own part of a path as it is kept. */
export const ownText = (own: Own): string => JSON.stringify({ version: VERSION, own });

function write(): void {
  const kept = keep(name, ownText($own.get()));
  for (const kind of ['own-full', 'own-refused']) dismissOwn(kind);
  if (kept === 'full') say('own-full', FULL);
  if (kept === 'refused') say('own-refused', REFUSED);
}

/** Puts everything at once, as after a change on a screen or from a file. */
export const replaceAll = (own: Own): void => changeOwn(() => own);
