import type { Compared } from '../../calc/core/compared.ts';
import { decodePath } from '../../link/decode.ts';
import { encodePath } from '../../link/encode.ts';
import { alternativeNames } from '../../link/known.ts';
import { recall, remember } from '../memory.ts';

/**
 * A column beside the open path. `own`: a copy of it, to which its quotes and orders belong as well. `shelf`: the kept
 * path it was taken from, whose own they are.
 */
export interface Beside {
  readonly compared: Compared;
  readonly own: boolean;
  readonly shelf?: string | undefined;
  /** What it was called where it came from: an invented owner's path, a path on the shelf. Not in a link. */
  readonly name?: string | undefined;
}

const REMEMBERED = 'columns';

/** A column as the tab remembers it: a path as a whole fragment. */
interface Written {
  readonly path?: string;
  readonly alternative?: string;
  readonly own?: boolean;
  readonly shelf?: string | undefined;
  readonly name?: string | undefined;
}

function write({ compared, own, shelf, name }: Beside): Written {
  return compared.kind === 'path'
    ? { path: encodePath(compared.path), own, shelf, name }
    : { alternative: compared.id };
}

/** Keeps the columns for as long as the tab is open. A refusal is no loss: the address holds them too. */
export function rememberColumns(line: string, columns: readonly Beside[]): void {
  remember(REMEMBERED, JSON.stringify({ line, columns: columns.map(write) }), 'sessionStorage');
}

function read({ path, alternative, own, shelf, name }: Written): Beside[] {
  if (typeof path === 'string')
    return [{ compared: { kind: 'path', path: decodePath(path).path }, own: own === true, shelf, name }];
  return typeof alternative === 'string' && alternativeNames.includes(alternative)
    ? [{ compared: { kind: 'alternative', id: alternative }, own: false }]
    : [];
}

interface Recalled {
  /** The line of work they stood beside. */
  readonly line: string;
  readonly columns: readonly Beside[];
}

/** The columns of this tab, or undefined where there are none or nobody can read them. */
export function recallColumns(): Recalled | undefined {
  try {
    const { line, columns } = JSON.parse(recall(REMEMBERED, 'sessionStorage') ?? '');
    return { line, columns: columns.flatMap(read) };
  } catch {
    return undefined;
  }
}
