import { atom } from 'nanostores';
import { type Compared, MOST_COMPARED } from '../../calc/core/compared.ts';
import type { Path } from '../../calc/core/path.ts';
import { encodeComparison, tailOf } from '../../link/comparison.ts';
import { decodeComparison } from '../../link/decode.ts';
import { encodePath } from '../../link/encode.ts';
import { isPath } from '../../link/is-path.ts';
import { splitColumns } from '../../link/pairs.ts';
import { isOurLine, lineNow, lineOfEntry, setTail } from '../address.ts';
import { $notes } from '../notes.ts';
import { ownOf, withOwn } from '../own-part.ts';
import { $open, $path, start } from '../stores.ts';
import { type Beside, recallColumns, rememberColumns } from './remembered.ts';
import { fetchShelfOwn, type ShelfOwn } from './shelf-own.ts';

/** What stands beside the open path: columns B to D. Undefined until somebody put something there. */
export const $others = atom<readonly Beside[] | undefined>(undefined);

const keyOf = (compared: Compared): string =>
  compared.kind === 'path' ? encodePath(compared.path) : compared.id;

const isOfMany = (hash: string): boolean => splitColumns(hash).length > 1;

/** Columns on their way into the address, with what they are called and whose they are. */
let awaited: readonly Beside[] = [];

/** Columns as a link has them; those that this tab knows keep their names, and the owner's own stay their own. */
function columnsIn(hash: string): Beside[] {
  const { others, notes } = decodeComparison(hash);
  const known = new Map(
    [...(recallColumns()?.columns ?? []), ...($others.get() ?? []), ...awaited].map((each) => [
      keyOf(each.compared),
      each,
    ]),
  );
  const said = new Set($notes.get().map(({ say }) => say));
  $notes.set([...$notes.get(), ...notes.filter(({ say }) => !said.has(say))]);
  return others.map((compared) => known.get(keyOf(compared)) ?? { compared, own: false });
}

/** In the address the columns follow every change of the first path, whose differences they are. */
function write(): void {
  const others = $others.get();
  if (others === undefined) return;
  setTail(
    tailOf(
      $path.get(),
      others.map(({ compared }) => compared),
    ),
  );
  rememberColumns(lineNow(), others);
}

let started = false;

/** Takes up the columns from the address, or from this tab, and follows the history. Once is enough. */
export function startColumns(): void {
  if (started) return;
  started = true;
  const { hash } = window.location;
  let typed: string | undefined;
  // Before the path is opened the address still says what was asked for, and afterwards nobody can tell.
  window.addEventListener('popstate', () => {
    typed = isOurLine(lineOfEntry()) || !isPath(window.location.hash) ? undefined : window.location.hash;
  });
  const lineBefore = lineOfEntry();
  start();
  window.addEventListener('popstate', () => {
    if (typed !== undefined) $others.set(isOfMany(typed) ? columnsIn(typed) : $others.get());
  });
  $others.set(opening(hash, isOurLine(lineBefore)));
  $others.subscribe(write);
  $others.subscribe(fetchShelfOwn);
  $path.listen(write);
}

/** An entry that this tab wrote may be older than its columns; a link that was followed is as it stands. */
function opening(hash: string, isOurs: boolean): readonly Beside[] | undefined {
  const kept = recallColumns();
  const remembered = kept && isOurLine(kept.line) ? kept.columns : undefined;
  if (isOurs && remembered) return remembered;
  return isOfMany(hash) ? columnsIn(hash) : remembered;
}

const now = (): readonly Beside[] => $others.get() ?? [];

export const isFull = (others: readonly Beside[]): boolean => others.length >= MOST_COMPARED - 1;

/** Which column of all already says this, counted from 0 for the open path; -1 for none. */
export const placeOf = (first: Path, others: readonly Beside[], compared: Compared): number =>
  [encodePath(first), ...others.map((each) => keyOf(each.compared))].indexOf(keyOf(compared));

/** Puts one more beside the open path; what stands there already, or does not fit, changes nothing. */
export function putBeside(compared: Compared, more: Partial<Beside> = {}): void {
  const others = now();
  if (isFull(others) || placeOf($path.get(), others, compared) >= 0) return;
  $others.set([...others, { own: false, ...more, compared }]);
}

/** Takes a column away; counted from 1, the first beside the open path. */
export const takeAway = (place: number): void => {
  $others.set(now().filter((_, at) => at + 1 !== place));
};

/** Two columns beside the open path change places; counted from 1. */
export function exchange(one: number, other: number): void {
  const others = [...now()];
  const [a, b] = [others[one - 1], others[other - 1]];
  if (!a || !b) return;
  others[one - 1] = b;
  others[other - 1] = a;
  $others.set(others);
}

/**
 * A column becomes the open path, and the one that was open stands in its place. A copy of the open path goes on the shelf
 * first, with its quotes and orders. Back takes it back.
 */
export async function makeOpen(place: number): Promise<void> {
  const others = now();
  const column = others[place - 1];
  if (column?.compared.kind !== 'path') return;
  const first = $path.get();
  const { id, record } = $open.get();
  if (column.own) await putOnShelf(withOwn(column.compared.path, ownOf(first)));
  const mine: Beside = {
    compared: { kind: 'path', path: withOwn(first, {}) },
    own: false,
    shelf: record && id,
    name: record?.name,
  };
  // The entry that is left stays as it is, so that Back finds it.
  awaited = others.map((each, at) => (at + 1 === place ? mine : each));
  const after = awaited.map(({ compared }) => compared);
  window.location.hash = encodeComparison(column.compared.path, after);
}

async function putOnShelf(path: Path): Promise<void> {
  const [{ hasRoom, putPath }, { freshName }] = await Promise.all([
    import('../shelf/kept-paths.ts'),
    import('../shelf/record.ts'),
  ]);
  const made = new Date().toISOString();
  if (hasRoom()) putPath(freshName(), path, { made, changed: made });
}

/** The columns for the sums, each owner's own way with its quotes and orders. */
export const forSums = (first: Path, others: readonly Beside[], shelf: ShelfOwn): Compared[] =>
  others.map(({ compared, own, shelf: id }) => {
    if (compared.kind !== 'path') return compared;
    const theirs = own ? ownOf(first) : id === undefined ? undefined : shelf[id];
    return theirs ? { kind: 'path', path: withOwn(compared.path, theirs) } : compared;
  });
