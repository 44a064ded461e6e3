import { VERSION as GRAMMAR } from '../../link/grammar.ts';
import type { Keeping } from '../memory.ts';

/** A path on the shelf as this device keeps it: all but its own part, which stands beside it under the same id. */
export interface KeptRecord {
  /** What the owner calls it; without one it is called after its answers. */
  readonly name?: string | undefined;
  readonly note?: string | undefined;
  /** Moments, ISO 8601; a path kept by an older visit has none. */
  readonly made?: string | undefined;
  readonly changed?: string | undefined;
  /** The path it branched from, by the id and the name that it had then. */
  readonly from?: { readonly id: string; readonly name: string } | undefined;
  /** The path as a link has it, without '#'. */
  readonly fragment: string;
  /** Names this state of the path; a tab writes only over the state that it has seen. */
  readonly rev: string;
  /** The state that this one was written over. */
  readonly over?: string | undefined;
}

/** How much the owner may type; a file may bring longer ones, which are kept. */
export const NAME_LENGTH = 80;
export const NOTE_LENGTH = 2000;
/** Paths that the owner may put on the shelf; what is kept so that nothing is lost does not count. */
export const MOST_PATHS = 200;

const VERSION = 1;

export const written = (record: KeptRecord): string => JSON.stringify({ version: VERSION, ...record });

const isText = (value: unknown): value is string => typeof value === 'string';
/** Whether a text may be a link of the version that this site writes; another would open as an empty path. */
export const isLink = (value: unknown): value is string => isText(value) && value.startsWith(`${GRAMMAR}?`);
const isTextOrNone = (value: unknown): boolean => value === undefined || isText(value);

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isOrigin = (value: unknown): boolean =>
  value === undefined || (isGroup(value) && isText(value.id) && isText(value.name));

/** Reads a kept text; undefined where it is not what this site writes. */
export function readRecord(text: string): KeptRecord | undefined {
  try {
    const kept: unknown = JSON.parse(text);
    if (!isGroup(kept) || kept.version !== VERSION || !isLink(kept.fragment) || !isText(kept.rev))
      return undefined;
    const { version: _, name, note, made, changed, from, fragment, rev, over } = kept;
    const sound = [name, note, made, changed, over].every(isTextOrNone) && isOrigin(from);
    return sound ? ({ name, note, made, changed, from, fragment, rev, over } as KeptRecord) : undefined;
  } catch {
    return undefined;
  }
}

/** A name that no other path and no other state has. */
export const freshName = (): string =>
  `${Date.now().toString(36)}${Math.random().toString(36).slice(2, 8).padEnd(6, '0')}`;

/** What an owner typed, without letters that a file cannot hold; nothing where only blanks are left. */
export function tidied(text: string): string | undefined {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  const plain = text.replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F]/g, ' ').toWellFormed();
  return plain.trim() || undefined;
}

/** What became of a path that was to be kept: "apart" where another tab had changed it and it got a place of its own. */
export type Kept = Keeping | 'apart';
