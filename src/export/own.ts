import type { Path } from '../calc/core/path.ts';

/** What only the owner knows: kept on the device and in files, in a link only on request. */
export type Own = Pick<
  Path,
  'purchases' | 'sellers' | 'currency' | 'chances' | 'allowance' | 'start' | 'progress' | 'families'
>;

/** A path as the link has it, and what only the owner knows, apart. `{ ...path, ...own }` puts them together again. */
export function splitOwn(whole: Path): { readonly path: Path; readonly own: Own } {
  const { purchases, sellers, currency, chances, allowance, start, progress, families, ...path } = whole;
  const given = Object.entries({
    purchases,
    sellers,
    currency,
    chances,
    allowance,
    start,
    progress,
    families,
  });
  return { path, own: Object.fromEntries(given.filter(([, value]) => value !== undefined)) };
}
