import type { Path } from '../calc/core/path.ts';
import { FILE_VERSION, FORMAT } from './limits.ts';
import type { PathFile } from './path-schema.ts';

/** What stands on the file besides the path; the day is the caller's, ISO 8601. */
export interface AboutFile {
  readonly name?: string;
  readonly note?: string;
  readonly saved?: string;
  readonly buyList?: PathFile['buy-list'];
}

/** A whole path as the text of a file: the safe copy of everything an owner has typed. `readPathFile` reads it. */
export function pathFile(path: Path, { name, note, saved, buyList }: AboutFile = {}): string {
  const {
    edition,
    size,
    facts,
    answers,
    owned,
    purchases,
    sellers,
    currency,
    chances,
    allowance,
    start,
    families,
  } = path;
  const file = {
    format: FORMAT,
    version: FILE_VERSION,
    name,
    note,
    saved,
    path: {
      edition,
      size,
      facts,
      answers,
      owned,
      purchases,
      sellers,
      currency,
      chances,
      allowance,
      start,
      families,
    },
    'buy-list': buyList,
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}
