import { afterEach, expect, test, vi } from 'vitest';
import type { Path } from '../../src/calc/core/path.ts';

const asked: { readonly path: Path; readonly answer: () => void; readonly fail: () => void }[] = [];
vi.mock('../../src/islands/compute.ts', () => ({
  reportOf: (path: Path) =>
    new Promise((resolve, reject) => {
      asked.push({ path, answer: () => resolve({ path }), fail: () => reject(new Error('no figures')) });
    }),
}));

const { $fault, $path, $report, place } = await import('../../src/islands/figures.ts');

/** The next report that is asked for. */
const nextAsked = async () => {
  await vi.waitFor(() => expect(asked).not.toEqual([]));
  return asked.shift()!;
};
const pathOf = (bed: number): Path => ({ ...$path.get(), facts: { swing: bed } });

afterEach(() => $fault.set(undefined));

test('a change that comes while figures are worked out has figures of its own', async () => {
  place(pathOf(0.2));
  const first = await nextAsked();
  place(pathOf(0.3));
  first.answer();
  const second = await nextAsked();
  expect(second.path.facts).toEqual({ swing: 0.3 });
  second.answer();
  await vi.waitFor(() => expect($report.get()?.path).toBe($path.get()));
});

test('figures that fail are said to have failed, unless the path has gone on meanwhile', async () => {
  place(pathOf(0.4));
  const first = await nextAsked();
  place(pathOf(0.5));
  first.fail();
  const second = await nextAsked();
  expect($fault.get()).toBeUndefined();
  second.fail();
  await vi.waitFor(() => expect($fault.get()).toEqual(new Error('no figures')));
});
