import type { Path } from '../calc/core/path.ts';
import { FILE_VERSION, FORMAT } from './limits.ts';
import { splitOwn } from './own.ts';
import type { PathFile } from './path-schema.ts';
import { progressToFile } from './progress.ts';

/** What stands on the file besides the path; the day is the caller's, ISO 8601. */
export interface AboutFile {
  readonly name?: string;
  readonly note?: string;
  readonly saved?: string;
  readonly buyList?: PathFile['buy-list'];
}

/** A whole path as the text of a file: the safe copy of everything an owner has typed. `readPathFile` reads it. */
export const pathFile = (path: Path, about: AboutFile = {}): string =>
  `${JSON.stringify(pathInFile(path, about), null, 2)}\n`;

/** The same before it is text, as a file of many paths has it too. */
export function pathInFile(path: Path, { name, note, saved, buyList }: AboutFile = {}): object {
  const { own, path: linked } = splitOwn(path);
  const progress = own.progress && progressToFile(own.progress);
  return {
    format: FORMAT,
    version: FILE_VERSION,
    name,
    note,
    saved,
    path: { ...linked, ...own, ...(progress ? { progress } : {}) },
    'buy-list': buyList,
  };
}
