import { type Compared, MOST_COMPARED } from '../calc/core/compared.ts';
import type { Path } from '../calc/core/path.ts';
import { type Carried, encodePath } from './encode.ts';
import { type Pair, pairsOf, splitColumns, versionOf } from './pairs.ts';
import { type Decoded, decodeFragment, type Known, type LinkNote } from './read.ts';

/**
 * A comparison in one link: the first path whole, behind each ';' what another path answers differently, or an alternative.
 * `without` names what the first path answers and the other does not.
 */

const WITHOUT = 'without';
const ALTERNATIVE = 'alternative';

/** The columns behind the first, each with its ';' in front; empty where the first path stands alone. */
export const tailOf = (first: Path, others: readonly Compared[], also: Carried = {}): string =>
  others.map((column) => `;${segmentOf(encodePath(first, also), column, also)}`).join('');

/** The whole fragment of a comparison, without the '#'. */
export const encodeComparison = (first: Path, others: readonly Compared[], also: Carried = {}): string =>
  encodePath(first, also) + tailOf(first, others, also);

function segmentOf(first: string, column: Compared, also: Carried): string {
  if (column.kind === 'alternative') return `${ALTERNATIVE}=${column.id}`;
  const [ours, theirs] = [new Map(pairsOf(first)), new Map(pairsOf(encodePath(column.path, also)))];
  const changed = [...theirs].filter(([key, value]) => ours.get(key) !== value);
  const gone = [...ours.keys()].filter((key) => !theirs.has(key));
  const pairs: Pair[] = gone.length > 0 ? [...changed, [WITHOUT, gone.join(',')]] : changed;
  // A link that ends on a bare ';' loses it in many a message: a path like the first repeats its size.
  const said = pairs.length > 0 ? pairs : [...theirs].filter(([key]) => key === 'size');
  return said.map(([key, value]) => `${key}=${value}`).join('&');
}

export interface DecodedComparison extends Omit<Decoded, 'path'> {
  readonly first: Path;
  readonly others: readonly Compared[];
}

/** What decoding has to know besides: the ids of the alternatives. */
export interface KnownColumns extends Known {
  readonly alternatives: ReadonlySet<string>;
}

/** Reads a comparison. Never throws, never guesses; a link of a single path is a comparison of one. */
export function decodeColumns(fragment: string, known: KnownColumns): DecodedComparison {
  const [head = '', ...rest] = splitColumns(fragment);
  const { path: first, notes, readable } = decodeFragment(head, known);
  if (!readable) return { first, others: [], notes, readable };
  const kept = rest.slice(0, MOST_COMPARED - 1);
  const read = kept.map((segment, at) => readColumn(head, segment, at, known, notes));
  return {
    first,
    others: read.flatMap(({ column }) => column ?? []),
    notes: [...notes, ...read.flatMap((each) => each.notes), ...tooMany(rest.length - kept.length)],
    readable,
  };
}

const tooMany = (more: number): LinkNote[] =>
  more <= 0
    ? []
    : [
        {
          kind: 'unknown-key',
          say: `The link holds ${more} more than the ${MOST_COMPARED} columns that fit. ${more === 1 ? 'It was' : 'They were'} left out.`,
        },
      ];

interface ReadColumn {
  readonly column?: Compared;
  readonly notes: readonly LinkNote[];
}

const LETTERS = 'BCD';

function readColumn(
  head: string,
  segment: string,
  at: number,
  known: KnownColumns,
  saidOfFirst: readonly LinkNote[],
): ReadColumn {
  const pairs = new Map(pairsOf(segment));
  const id = pairs.get(ALTERNATIVE);
  if (id !== undefined) return readAlternative(id, at, known);
  const { path, notes } = decodeFragment(wholeOf(head, pairs), known);
  const already = new Set(saidOfFirst.map(({ say }) => say));
  const fresh = notes.filter(({ say }) => !already.has(say));
  return {
    column: { kind: 'path', path },
    notes: fresh.map((note) => ({ ...note, say: `Column ${LETTERS[at]}: ${note.say}` })),
  };
}

function readAlternative(id: string, at: number, known: KnownColumns): ReadColumn {
  if (known.alternatives.has(id)) return { column: { kind: 'alternative', id }, notes: [] };
  const say = `Column ${LETTERS[at]}: “${id.slice(0, 60)}” is not an alternative that this site knows. It was left out.`;
  return { notes: [{ kind: 'unknown-answer', say }] };
}

/** The first path with the differences put in, as a fragment of its own. */
function wholeOf(head: string, changes: ReadonlyMap<string, string>): string {
  const gone = new Set((changes.get(WITHOUT) ?? '').split(','));
  const all = new Map(pairsOf(head).filter(([key]) => !gone.has(key)));
  for (const [key, value] of changes) if (key !== WITHOUT) all.set(key, value);
  return `${versionOf(head)}?${[...all].map(([key, value]) => `${key}=${value}`).join('&')}`;
}
