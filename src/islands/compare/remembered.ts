import type { Compared } from '../../calc/core/compared.ts';
import { decodePath } from '../../link/decode.ts';
import { encodePath } from '../../link/encode.ts';
import { alternativeNames } from '../../link/known.ts';
import { recall, remember } from '../memory.ts';

/** A column beside the open path. `own`: a way of the owner's own, which their quotes and orders belong to as well. */
export interface Beside {
  readonly compared: Compared;
  readonly own: boolean;
  /** What it was called where it came from: an invented owner's path, a path on the shelf. Not in a link. */
  readonly name?: string | undefined;
}

const REMEMBERED = 'columns';

/** What the tab remembers: of which line of work, and the columns, paths as whole fragments. */
interface Written {
  readonly line: string;
  readonly columns: readonly {
    readonly path?: string;
    readonly alternative?: string;
    readonly own?: true;
    readonly name?: string;
  }[];
}

/** Keeps the columns for as long as the tab is open. A refusal is no loss: the address holds them too. */
export function rememberColumns(line: string, columns: readonly Beside[]): void {
  const written: Written = {
    line,
    columns: columns.map(({ compared, own, name }) => ({
      ...(compared.kind === 'path' ? { path: encodePath(compared.path) } : { alternative: compared.id }),
      ...(own ? { own } : {}),
      ...(name === undefined ? {} : { name }),
    })),
  };
  remember(REMEMBERED, JSON.stringify(written), 'sessionStorage');
}

function read({ path, alternative, own, name }: Written['columns'][number]): Beside[] {
  if (typeof path === 'string')
    return [{ compared: { kind: 'path', path: decodePath(path).path }, own: own === true, name }];
  return typeof alternative === 'string' && alternativeNames.includes(alternative)
    ? [{ compared: { kind: 'alternative', id: alternative }, own: false }]
    : [];
}

/** The columns of this tab, or undefined where there are none or nobody can read them. */
export function recallColumns(): { readonly line: string; readonly columns: readonly Beside[] } | undefined {
  try {
    const { line, columns } = JSON.parse(recall(REMEMBERED, 'sessionStorage') ?? '') as Written;
    return { line, columns: columns.flatMap(read) };
  } catch {
    return undefined;
  }
}
