import type { Path } from '../calc/core/path.ts';
import { pathInFile } from './json.ts';
import { SHELF_FORMAT, SHELF_VERSION } from './limits.ts';

/** A path of the shelf with all that is known about it. */
export interface ShelfEntry {
  readonly id: string;
  readonly path: Path;
  readonly name?: string | undefined;
  readonly note?: string | undefined;
  /** Moments, ISO 8601. */
  readonly made?: string | undefined;
  readonly changed?: string | undefined;
  /** The path it branched from, by the id and the name that it had then. */
  readonly from?: { readonly id: string; readonly name: string } | undefined;
}

/** A kept text that could not be read in whole, as it stands. */
export interface UnreadText {
  readonly id: string;
  readonly text: string;
}

/** The whole shelf as the text of one file; the day is the caller's, ISO 8601. `readShelfFile` reads it. */
export function shelfFile(
  entries: readonly ShelfEntry[],
  { saved, unread = [] }: { readonly saved?: string; readonly unread?: readonly UnreadText[] } = {},
): string {
  const paths = entries.map(({ id, path, name, note, made, changed, from }) => ({
    ...{ id, made, changed, from },
    file: pathInFile(path, { ...(name ? { name } : {}), ...(note ? { note } : {}) }),
  }));
  const file = {
    ...{ format: SHELF_FORMAT, version: SHELF_VERSION, saved, paths },
    unread: unread.length > 0 ? unread : undefined,
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}
