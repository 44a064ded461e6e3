// The reader's own values come from a worker, later than the page: they never stand over what was typed meanwhile.
import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { whip } from '../../../src/calc/working-figures/whip.ts';
import { Working } from '../../../src/islands/working/Working.tsx';

const late = vi.hoisted(() => ({
  come: (_: object) => {},
  values: undefined as Promise<object> | undefined,
}));
vi.mock('../../../src/islands/working/own-values.ts', () => ({ ownValues: () => late.values }));

afterEach(cleanup);

const length = () => screen.getByLabelText('Length between the bearings') as HTMLInputElement;

async function openWithPath(typed?: string) {
  window.location.hash = '#1?size=medium';
  late.values = new Promise((resolve) => {
    late.come = resolve;
  });
  render(<Working figure={whip} />);
  if (typed) fireEvent.input(length(), { target: { value: typed } });
  await act(async () => {
    await vi.dynamicImportSettled();
    late.come({ length: 0.45 });
    await late.values;
  });
}

test('a figure that nobody touched takes the values of the path', async () => {
  await openWithPath();
  await vi.waitFor(() => expect(length().value).toBe('450'));
});

test('what was typed stays, and the values of the path are one press away', async () => {
  await openWithPath('800');
  await vi.waitFor(() => expect(screen.getByText('Show the example')).toBeTruthy());
  expect(length().value).toBe('800');
  fireEvent.click(screen.getByText('Start again'));
  expect(length().value).toBe('450');
});
