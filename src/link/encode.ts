import type { Path } from '../calc/core/path.ts';
import { factById } from '../calc/facts.ts';
import { NOT_SURE, toLink, VERSION } from './grammar.ts';
import { progressPairs } from './progress.ts';
import { pricePairs } from './write-prices.ts';

/** What a link carries of what only the owner knows; nothing of it unless it is asked for. */
export interface Carried {
  readonly progress?: boolean;
  readonly prices?: boolean;
}

/**
 * The path as the readable fragment of a link, without the '#': grammar version, then keys in alphabetical order.
 * Every answer the owner gave is carried, even where it equals what would be assumed. Of what is private only what is asked
 * for, and never words: no note, no name of a shop.
 */
export function encodePath(path: Path, also: Carried = {}): string {
  const pairs: [string, string][] = [
    ['edition', path.edition],
    ['size', path.size],
    ...Object.entries(path.answers).map(([id, answer]): [string, string] => [
      id,
      answer.join(',') || NOT_SURE,
    ]),
    ...Object.entries(path.facts).map(([id, value]): [string, string] => [id, factText(id, value)]),
  ];
  if (path.owned.length > 0) pairs.push(['have', [...path.owned].sort().join(',')]);
  if (also.progress && path.progress) pairs.push(...progressPairs(path.progress));
  if (also.prices) pairs.push(...pricePairs(path));
  pairs.sort(([a], [b]) => (a < b ? -1 : 1));
  return `${VERSION}?${pairs.map(([key, value]) => `${key}=${encodeValue(value)}`).join('&')}`;
}

function factText(id: string, value: number): string {
  const fact = factById(id);
  return fact ? toLink(fact, value) : String(value);
}

/** Commas, colons and strokes stay readable; whatever a fragment cannot hold is escaped. */
const encodeValue = (value: string): string =>
  encodeURIComponent(value).replaceAll('%2C', ',').replaceAll('%3A', ':').replaceAll('%2F', '/');
