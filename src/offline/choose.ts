/** What the worker decides, apart from the browser: which file from where, and what changes from one list to the next. */

export type Files = Readonly<Record<string, string>>;

/** Shown in the place of a page that is not kept when there is no connection. */
export const NOT_KEPT = 'not-kept/';

/** Chunks have a hash in their names: a page of an earlier copy goes on asking for those of its own. */
export const CHUNKS = '_astro/';

/** Where an answer comes from. */
export type Source =
  | { readonly from: 'drawer'; readonly address: string }
  | { readonly from: 'earlier'; readonly address: string }
  | { readonly from: 'elsewhere'; readonly to: string }
  | { readonly from: 'web'; readonly else?: string };

/** The address below the base, or undefined where it is not of this site. */
export function addressAsked(url: string, base: string): string | undefined {
  const { pathname, origin } = new URL(url);
  if (origin !== new URL(base).origin) return undefined;
  const root = new URL(base).pathname;
  return pathname.startsWith(root) ? pathname.slice(root.length) : undefined;
}

/** Where to look for an address first. What stands behind "?" is the page's own affair and opens the same file. */
export function sourceOf(address: string, files: Files, isPage: boolean): Source {
  const page = address.replace(/(^|\/)index\.html$/, '$1');
  if (Object.hasOwn(files, page)) return { from: 'drawer', address: page };
  if (isPage && Object.hasOwn(files, `${page}/`)) return { from: 'elsewhere', to: `${page}/` };
  if (address.startsWith(CHUNKS)) return { from: 'earlier', address };
  return isPage ? { from: 'web', else: NOT_KEPT } : { from: 'web' };
}

/** The name of a file in the drawer: another hash is another file, so that two copies of the site lie side by side. */
export const nameOf = (address: string, files: Files): string => `${address}?${files[address]}`;

/** The addresses whose files are not in the drawer yet. */
export function toFetch(files: Files, inDrawer: ReadonlySet<string>): string[] {
  return Object.keys(files).filter((address) => !inDrawer.has(nameOf(address, files)));
}

/** The names in the drawer that none of these lists asks for. */
export function toDrop(inDrawer: Iterable<string>, ...lists: readonly Files[]): string[] {
  const wanted = new Set(
    lists.flatMap((files) => Object.keys(files).map((address) => nameOf(address, files))),
  );
  return [...inDrawer].filter((name) => !wanted.has(name));
}
