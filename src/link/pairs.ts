import { nowCalled } from './grammar.ts';

/** A key and its value as they stand in a link, escapes and all. */
export type Pair = [key: string, value: string];

/** Some messages escape it on the way; no value that we write holds one. */
const SEPARATOR = /;|%3b/i;

/** The columns of a link; a link of one path has one. */
export const splitColumns = (fragment: string): string[] => fragment.replace(/^#/, '').split(SEPARATOR);

/** The first path of a link, whatever it is compared with. */
export const firstOf = (fragment: string): string => splitColumns(fragment)[0]!;

export const versionOf = (fragment: string): string => fragment.slice(0, Math.max(0, fragment.indexOf('?')));

/** The pairs of a fragment or of a piece of one, keys by the names they have now; the first of two alike counts. */
export function pairsOf(fragment: string): Pair[] {
  const query = fragment.slice(fragment.indexOf('?') + 1);
  const seen = new Set<string>();
  return query.split('&').flatMap((pair): Pair[] => {
    const equals = pair.indexOf('=');
    const key = nowCalled(equals < 0 ? pair : pair.slice(0, equals));
    if (pair === '' || seen.has(key)) return [];
    seen.add(key);
    return [[key, equals < 0 ? '' : pair.slice(equals + 1)]];
  });
}
