import { type Compared, MOST_COMPARED } from '../../calc/core/compared.ts';
import type { Path } from '../../calc/core/path.ts';
import type { DecodedComparison } from '../../link/decode.ts';
import { counted } from '../shared/format.ts';
import { placeOf } from './columns.ts';
import { letterOf } from './names.ts';
import type { Beside } from './remembered.ts';

export interface Pasted {
  readonly columns: readonly Compared[];
  readonly say: string;
}

const NO_LINK =
  'This is no link to a path. One ends with #, a number, a question mark and the answers: #1?size=medium … Copy the whole address.';

/** What of a pasted link can stand beside A, and what has to be said about the rest. */
export function pasted(read: DecodedComparison | undefined, first: Path, others: readonly Beside[]): Pasted {
  if (!read?.readable) return { columns: [], say: NO_LINK };
  const all: Compared[] = [{ kind: 'path', path: read.first }, ...read.others];
  const fresh = all.filter((column) => placeOf(first, others, column) < 0);
  if (fresh.length === 0) {
    const place = placeOf(first, others, all[0]!);
    return { columns: [], say: `That is column ${letterOf(place)} already.` };
  }
  const fit = fresh.slice(0, MOST_COMPARED - 1 - others.length);
  const left = fresh.length - fit.length;
  const notes = read.notes.map(({ say }) => say);
  const more = left > 0 ? [`${counted(left, 'more column')} of the link did not fit.`] : [];
  return { columns: fit, say: [...notes, ...more].join(' ') };
}
