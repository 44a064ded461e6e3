import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import type { Path } from '../../src/calc/core/path.ts';
import { RunningCard } from '../../src/islands/guide/RunningCard.tsx';
import { WithFigures } from '../../src/islands/shared/Boundary.tsx';
import { $receipts, answer, start } from '../../src/islands/stores.ts';

vi.mock('../../src/islands/compute.ts', async (original) => {
  const { reportOf } = await original<typeof import('../../src/islands/compute.ts')>();
  return {
    reportOf: (path: Path) => {
      if (path.answers.control?.includes('motion-card-pc')) throw new Error('a sum went wrong');
      return reportOf(path);
    },
  };
});

afterEach(cleanup);

/** The first figures draw an edition; a busy machine takes a while over it. */
const PATIENCE = { timeout: 10_000 };

test('the card says that the figures failed, and has them again with the next answer', async () => {
  start();
  render(
    <WithFigures what="the running card">
      <RunningCard />
    </WithFigures>,
  );
  await screen.findByText(/ways this could turn out cost/, {}, PATIENCE);

  answer('control', ['motion-card-pc']);
  await screen.findByText(/We made a mistake in the running card/, {}, PATIENCE);
  expect(screen.getByText(/a sum went wrong/)).toBeDefined();

  answer('control', ['standalone-control']);
  await screen.findByText(/ways this could turn out cost/, {}, PATIENCE);
  expect(screen.queryByText(/We made a mistake/)).toBeNull();

  answer('hand-use', []);
  await waitFor(() => expect($receipts.get()[0]?.moved).toBeDefined(), PATIENCE);
  expect($receipts.get().map(({ lost }) => lost ?? false)).toEqual([false, true, true]);
}, 300_000);
