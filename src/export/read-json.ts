import { type Answer, emptyPath, type Path } from '../calc/core/path.ts';
import { factById } from '../calc/facts.ts';
import { decisionById } from '../calc/guide.ts';
import { nowCalled } from '../link/grammar.ts';
import { currentName, editionNames } from '../link/known.ts';
import { type FileNote, quoted, tooLarge } from './file-note.ts';
import { knownOwn } from './known-own.ts';
import { FILE_VERSION, FORMAT } from './limits.ts';
import { nameShape, noteShape, savedShape } from './path-schema.ts';
import { isGroup, readOwn } from './read-own.ts';

/** What a file of a path came to. */
export interface ReadFile {
  readonly path: Path;
  readonly name?: string;
  readonly note?: string;
  /** Day the file was saved, ISO 8601. */
  readonly saved?: string;
  readonly notes: readonly FileNote[];
  /** False when nothing of the file could be read; the path is then empty and must replace nothing. */
  readonly readable: boolean;
}

const unreadable = (note: FileNote): ReadFile => ({
  path: emptyPath(currentName),
  notes: [note],
  readable: false,
});

const notAFile = (why: string): ReadFile =>
  unreadable({ kind: 'not-a-file', say: `This file does not hold a path: ${why}. Nothing was changed.` });

/** The value that a text stands for, or in words why it stands for none. Never throws. */
export function parsed(text: string): { readonly raw?: unknown; readonly fault?: string } {
  try {
    return { raw: JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text) };
  } catch (fault) {
    return { fault: fault instanceof SyntaxError ? 'it is not JSON' : 'it is nested too deeply' };
  }
}

/**
 * Reads the text of a file that `pathFile` wrote. Never throws, never guesses: what cannot be read is listed in the notes
 * and left out.
 */
export function readPathFile(text: string): ReadFile {
  const refusal = tooLarge(text.length);
  if (refusal) return unreadable(refusal);
  const { raw, fault } = parsed(text);
  return fault ? notAFile(fault) : readPathInFile(raw);
}

/** The same once it is no text any more, as in a file of many paths. */
export function readPathInFile(raw: unknown): ReadFile {
  if (!isGroup(raw) || raw.format !== FORMAT) return notAFile(`“format” is not “${FORMAT}”`);
  if (raw.version !== FILE_VERSION) return otherVersion(raw.version);
  return isGroup(raw.path) ? readFile(raw, raw.path) : notAFile('“path” is missing');
}

const otherVersion = (version: unknown): ReadFile =>
  unreadable({
    kind: 'other-version',
    say: `This file is written in version ${quoted(version)} of the files; this site reads version ${FILE_VERSION}. Nothing was changed.`,
  });

type Group = Readonly<Record<string, unknown>>;

const FIELDS = ['format', 'version', 'name', 'note', 'saved', 'path', 'buy-list'];
const PATH_FIELDS = [
  ...['edition', 'size', 'facts', 'answers', 'owned'],
  ...['purchases', 'sellers', 'currency', 'chances', 'allowance', 'start', 'progress', 'families'],
];

function readFile(raw: Group, rawPath: Group): ReadFile {
  const notes: FileNote[] = [...strangers(raw, FIELDS), ...strangers(rawPath, PATH_FIELDS)];
  const { own, notes: ownNotes } = readOwn(rawPath, knownOwn);
  const path: Path = {
    edition: readEdition(rawPath.edition, notes),
    size: readSize(rawPath.size, notes),
    facts: readFacts(rawPath.facts, notes),
    answers: readAnswers(rawPath.answers, notes),
    owned: readOwned(rawPath.owned, notes),
    ...own,
  };
  const texts = {
    name: readText(raw.name, 'name', nameShape, notes),
    note: readText(raw.note, 'note', noteShape, notes),
    saved: readText(raw.saved, 'saved', savedShape, notes),
  };
  return { path, ...texts, notes: [...notes, ...ownNotes], readable: true };
}

const strangers = (raw: Group, fields: readonly string[]): FileNote[] =>
  Object.keys(raw)
    .filter((key) => !fields.includes(key))
    .map((key) => leftOut(`${quoted(key)} is not a field of this file.`));

const leftOut = (say: string): FileNote => ({ kind: 'left-out', say: `${say} It was left out.` });
const unknown = (what: string, value: unknown): FileNote => ({
  kind: 'unknown-id',
  say: `${what}: ${quoted(value)} is not known to this site. It was left out.`,
});

function readText(
  raw: unknown,
  field: string,
  shape: typeof nameShape,
  notes: FileNote[],
): string | undefined {
  if (raw === undefined) return undefined;
  const result = shape.safeParse(raw);
  if (!result.success) notes.push(leftOut(`${quoted(raw)} cannot be read as “${field}”.`));
  return result.data;
}

function readEdition(raw: unknown, notes: FileNote[]): string {
  if (typeof raw === 'string' && editionNames.includes(raw)) return raw;
  notes.push({
    kind: 'other-edition',
    say: `The prices of edition ${quoted(raw)} are not here. Edition ${currentName} is used instead, so the figures may differ.`,
  });
  return currentName;
}

function readSize(raw: unknown, notes: FileNote[]): Path['size'] {
  if (raw === 'small' || raw === 'medium' || raw === 'large') return raw;
  notes.push({ kind: 'unknown-id', say: `Size of lathe: ${quoted(raw)} is not known. Medium stands in.` });
  return emptyPath(currentName).size;
}

/** The entries of a group under the names their ids have now, or none and a note when it is no group. */
function entriesOf(raw: unknown, field: string, notes: FileNote[]): [string, unknown][] {
  if (isGroup(raw)) return Object.entries(raw).map(([id, value]) => [nowCalled(id), value]);
  notes.push(leftOut(`“${field}” should be a group of entries and is ${quoted(raw)}.`));
  return [];
}

function readFacts(raw: unknown, notes: FileNote[]): Record<string, number> {
  const sound = entriesOf(raw, 'facts', notes).filter((entry): entry is [string, number] => {
    const [id, value] = entry;
    const fact = factById(id);
    const good = fact !== undefined && typeof value === 'number' && Number.isFinite(value);
    if (!fact) notes.push(unknown('A figure', id));
    else if (!good) notes.push(leftOut(`${fact.name}: ${quoted(value)} is not a number.`));
    return good;
  });
  return Object.fromEntries(sound);
}

function readAnswers(raw: unknown, notes: FileNote[]): Record<string, Answer> {
  const sound = entriesOf(raw, 'answers', notes).flatMap(([id, value]): [string, Answer][] => {
    const decision = decisionById(id);
    if (!decision) notes.push(unknown('A question', id));
    else if (!Array.isArray(value))
      notes.push(leftOut(`${decision.name}: ${quoted(value)} is not a list of answers.`));
    if (!decision || !Array.isArray(value)) return [];
    const options = decision.options.map((option) => option.id);
    const valid = known(value, (option) => options.includes(option), decision.name, notes);
    const kept = decision.many ? valid : valid.slice(0, 1);
    for (const extra of valid.slice(kept.length))
      notes.push(leftOut(`${decision.name}: ${quoted(extra)} is a second answer where one is asked for.`));
    return kept.length > 0 || value.length === 0 ? [[id, kept]] : [];
  });
  return Object.fromEntries(sound);
}

function readOwned(raw: unknown, notes: FileNote[]): string[] {
  if (Array.isArray(raw)) return known(raw, (id) => knownOwn.parts.has(id), 'What you already have', notes);
  notes.push(leftOut(`“owned” should be a list and is ${quoted(raw)}.`));
  return [];
}

/** The ids of a list that are known, each once, under the names they have now. */
function known(
  raw: readonly unknown[],
  isKnown: (id: string) => boolean,
  what: string,
  notes: FileNote[],
): string[] {
  const ids = raw.map((id) => (typeof id === 'string' ? nowCalled(id) : id));
  const good = ids.filter((id): id is string => typeof id === 'string' && isKnown(id));
  for (const id of ids) if (!good.includes(id as string)) notes.push(unknown(what, id));
  return [...new Set(good)];
}
