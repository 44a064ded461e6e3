import type { WayThrough } from '../../calc/choosing.ts';
import type { Path } from '../../calc/core/path.ts';
import type { Report } from '../../calc/evaluate.ts';
import { encodeComparison } from '../../link/comparison.ts';
import { encodePath } from '../../link/encode.ts';
import { ownOf, sameOwn, withOwn } from '../own-part.ts';
import { counted } from '../shared/format.ts';
import { to } from '../shared/places.ts';
import { $path, change } from '../stores.ts';
import { type Difference, differencesOf } from './words.ts';

/** Which answers of a way differ from the plan as it is. */
export const differsFrom = ({ choices }: Report, { path }: WayThrough): Difference[] =>
  differencesOf(
    path.answers,
    Object.fromEntries(choices.map(({ decision, options }) => [decision, options])),
  );

/** Takes all answers of a way as one change: one receipt, one undo. */
export function openWay(way: WayThrough, number: number, differing: number): void {
  const { facts, answers } = way.path;
  change(
    { ...$path.get(), facts, answers },
    {
      name: `Way ${number}`,
      saidBefore: 'as it was',
      saidNow:
        differing === 0 ? 'every answer settled as planned' : `${counted(differing, 'answer')} set anew`,
    },
  );
}

/** The whole address that opens a way on any device; quotes and orders stay at home. */
export const linkOf = ({ path }: WayThrough): string =>
  new URL(`${to('plan/')}#${encodePath(withOwn(path, {}))}`, window.location.href).href;

/** The open path and a way side by side. */
export const besideMine = ({ path }: WayThrough): string =>
  `${to('compare/')}#${encodeComparison($path.get(), [{ kind: 'path', path: withOwn(path, {}) }])}`;

/** Whether a search still speaks of this path: it is the path searched, or one of the ways found, at the same prices. */
export function stillHolds(searched: Path, now: Path, ways: readonly WayThrough[]): boolean {
  if (searched === now) return true;
  const sameOwner = sameOwn(ownOf(searched), ownOf(now));
  return sameOwner && (encodePath(searched) === encodePath(now) || ways.some((way) => isOpenNow(way, now)));
}

/** Whether the path on the sheet is this way. */
export const isOpenNow = ({ path }: WayThrough, now: Path): boolean => encodePath(path) === encodePath(now);
