import { createHash } from 'node:crypto';

/** What the site is made of, as far as it is kept on a device: each address below the base, and the hash of what it holds. */
export interface KeptList {
  readonly bytes: number;
  readonly files: Readonly<Record<string, string>>;
}

export interface BuiltFile {
  /** Below the folder of the build, with forward slashes. */
  readonly file: string;
  readonly content: Uint8Array;
}

/** Of no use on a device: pictures for other sites, what servers and searches read, and the worker itself. */
const LEFT_OUT = /^(?:pictures\/|[._]|robots\.txt$|sitemap\.xml$|404\.html$|at-hand\.)|\/\./;
const CHUNK = /^_astro\//;

/** Whether a built file belongs to what is kept. */
export const isKept = (file: string): boolean => CHUNK.test(file) || !LEFT_OUT.test(file);

/** The address of a file below the base: a page is asked for by its folder, and signs are written as in an address. */
export const addressOf = (file: string): string => encodeURI(file.replace(/(^|\/)index\.html$/, '$1'));

/** The first eight bytes of the SHA-256, as hexadecimal: enough to tell one build's file from another's. */
export const hashOf = (content: Uint8Array): string =>
  createHash('sha256').update(content).digest('hex').slice(0, 16);

/** The list of a build; the same files give the same list, in whatever order they were read. */
export function listOf(built: readonly BuiltFile[]): KeptList {
  const kept = built
    .filter(({ file }) => isKept(file))
    .map(({ file, content }) => ({ address: addressOf(file), hash: hashOf(content), bytes: content.length }))
    .sort((a, b) => (a.address < b.address ? -1 : 1));
  return {
    bytes: kept.reduce((sum, { bytes }) => sum + bytes, 0),
    files: Object.fromEntries(kept.map(({ address, hash }) => [address, hash])),
  };
}
