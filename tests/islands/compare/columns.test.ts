import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { Compared } from '../../../src/calc/core/compared.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { pasted } from '../../../src/islands/compare/pasted-columns.ts';
import type { Beside } from '../../../src/islands/compare/remembered.ts';
import { encodeComparison } from '../../../src/link/comparison.ts';
import { decodeComparison } from '../../../src/link/decode.ts';
import { encodePath } from '../../../src/link/encode.ts';

vi.mock('../../../src/islands/compute.ts', () => ({ reportOf: (path: unknown) => ({ path }) }));

const [a, b, c, d, e] = referencePaths.map(({ path }) => path);
const asPath = (path: typeof a): Compared => ({ kind: 'path', path: path! });
const readout: Compared = { kind: 'alternative', id: 'readout' };

/** A page of its own at an address: modules are loaded anew, storage stays. */
async function open(hash: string, state: unknown = null) {
  vi.resetModules();
  window.history.replaceState(state, '', `/compare/${hash}`);
  const columns = await import('../../../src/islands/compare/columns.ts');
  const stores = await import('../../../src/islands/stores.ts');
  columns.startColumns();
  return { ...columns, ...stores };
}

const written = () => decodeComparison(window.location.hash);
const keys = (others: readonly (Beside | Compared)[] | undefined) =>
  others?.map((each) => {
    const compared = 'compared' in each ? each.compared : each;
    return compared.kind === 'path' ? encodePath(compared.path) : compared.id;
  });

beforeEach(() => {
  localStorage.clear();
  sessionStorage.clear();
});

describe('columns beside the open path', () => {
  test('come from the address, and the address follows when one is added, moved or taken away', async () => {
    const page = await open(`#${encodeComparison(a!, [asPath(b), readout])}`);
    expect(keys(page.$others.get())).toEqual(keys([asPath(b), readout]));
    page.putBeside(asPath(c));
    page.putBeside(asPath(d));
    expect(keys(written().others)).toEqual(keys([asPath(b), readout, asPath(c)]));
    page.exchange(3, 2);
    expect(keys(written().others)).toEqual(keys([asPath(b), asPath(c), readout]));
    page.takeAway(1);
    page.putBeside(readout);
    expect(keys(written().others)).toEqual(keys([asPath(c), readout]));
    expect(encodePath(written().first)).toBe(encodePath(a!));
  });

  test('stay whole when the open path changes', async () => {
    const page = await open(`#${encodeComparison(a!, [asPath(b)])}`);
    page.setFact('swing', 0.2);
    page.answer('control', undefined);
    expect(written().first.facts.swing).toBe(0.2);
    expect(keys(written().others)).toEqual([encodePath(b!)]);
    page.undo();
    expect(keys(written().others)).toEqual([encodePath(b!)]);
  });

  test('are there again after another page, and none is as good as some', async () => {
    const page = await open(`#${encodeComparison(a!, [asPath(b)])}`);
    page.putBeside(asPath(c), { name: 'Mine' });
    const again = await open(`#${encodePath(a!)}`);
    expect(keys(again.$others.get())).toEqual([encodePath(b!), encodePath(c!)]);
    expect(again.$others.get()?.[1]?.name).toBe('Mine');
    again.takeAway(1);
    again.takeAway(1);
    expect((await open(`#${encodePath(a!)}`)).$others.get()).toEqual([]);
  });

  test('of one path are not those of another that somebody sent', async () => {
    await open(`#${encodeComparison(a!, [asPath(b)])}`);
    expect((await open(`#${encodePath(d!)}`)).$others.get()).toBeUndefined();
  });

  test('an unknown answer in a column is said with its letter', async () => {
    const page = await open(`#${encodePath(a!)};control=none-such`);
    const { $notes } = await import('../../../src/islands/notes.ts');
    expect(
      $notes
        .get()
        .map(({ say }) => say)
        .join(),
    ).toContain('Column B');
    expect(page.$others.get()).toHaveLength(1);
  });
});

describe('a pasted link', () => {
  const first = a!;
  const beside = (columns: readonly Compared[]): Beside[] =>
    columns.map((compared) => ({ compared, own: false }));

  test('gives its path, or as many of its columns as fit', () => {
    const three = decodeComparison(encodeComparison(b!, [asPath(c), asPath(d)]));
    expect(keys(pasted(three, first, beside([readout])).columns)).toEqual([encodePath(b!), encodePath(c!)]);
    expect(pasted(three, first, beside([readout])).say).toBe('1 more column of the link did not fit.');
    expect(keys(pasted(decodeComparison(encodePath(e!)), first, []).columns)).toEqual([encodePath(e!)]);
  });

  test('says what stands there already, and what is no link', () => {
    expect(pasted(decodeComparison(encodePath(first)), first, []).say).toBe('That is column A already.');
    expect(pasted(decodeComparison(encodePath(b!)), first, beside([readout, asPath(b)])).say).toBe(
      'That is column C already.',
    );
    expect(pasted(undefined, first, []).say).toContain('This is no link to a path.');
  });
});
