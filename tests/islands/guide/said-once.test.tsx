import { act, cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { receiptOf } from '../../../src/calc/choosing.ts';
import type { Path } from '../../../src/calc/core/path.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { facts } from '../../../src/calc/facts.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { ask } from '../../../src/islands/ask/ask.ts';
import { LimitField } from '../../../src/islands/guide/LimitField.tsx';
import { Receipt } from '../../../src/islands/guide/Receipt.tsx';
import { FactField } from '../../../src/islands/lathe/FactField.tsx';
import { movedBetween, type Receipt as ReceiptData } from '../../../src/islands/receipts.ts';
import { $receipts } from '../../../src/islands/stores.ts';

vi.mock('../../../src/islands/ask/ask.ts');

afterEach(cleanup);

const before: Path = { ...referencePaths[0]!.path, edition: currentEdition.edition };
const now: Path = { ...before, answers: { ...before.answers, compound: [] } };
const change: ReceiptData = {
  number: 1,
  decision: 'compound',
  name: 'Compound slide',
  saidBefore: 'kept',
  saidNow: 'not sure yet',
  pathBefore: before,
  pathNow: now,
};
const moved = movedBetween(evaluate(before, currentEdition), evaluate(now, currentEdition), 'compound');

/** What a reader of the screen hears of a part that is read out when it changes. */
function heardFrom(region: Element): string[] {
  const heard: string[] = [];
  new MutationObserver(() => {
    const text = region.textContent?.trim() ?? '';
    if (text && text !== heard.at(-1)) heard.push(text);
  }).observe(region, { childList: true, characterData: true, subtree: true });
  return heard;
}

test('an answer is said aloud once, when all of it is known, without its buttons', async () => {
  let tell: (told: unknown) => void = () => {};
  vi.mocked(ask).mockReturnValue(
    new Promise((resolve) => {
      tell = resolve as typeof tell;
    }),
  );
  $receipts.set([change]);
  render(<Receipt />);
  const heard = heardFrom(screen.getByRole('status'));
  expect(screen.getByText('Compound slide: not sure yet.')).toBeTruthy();
  expect(screen.getByRole('status').textContent).toBe('');
  act(() => $receipts.set([{ ...change, moved }]));
  await act(async () => tell(receiptOf(now, before, currentEdition)));
  await waitFor(() => expect(screen.getByRole('status').textContent).toMatch(/^Compound slide: .* Money: /));
  await waitFor(() => expect(heard).toHaveLength(1));
  expect(heard[0]).not.toContain('Undo');
  expect(screen.getByRole('button', { name: /^Undo ?: Compound slide$/ })).toBeTruthy();
});

test('what is wrong with a figure is said when it is typed to the end, not letter by letter', async () => {
  const swing = facts.find(({ name }) => name === 'Swing over the bed')!;
  render(<FactField fact={swing} size="medium" />);
  const field = screen.getByRole('textbox', { name: 'Swing over the bed' });
  const region = screen.getByRole('status');
  const heard = heardFrom(region);
  for (const text of ['1', '12', '120', '1200']) fireEvent.input(field, { target: { value: text } });
  expect(region.textContent).toBe('');
  fireEvent.change(field, { target: { value: '1200' } });
  await waitFor(() => expect(region.textContent).toMatch(/lies outside/));
  expect(heard).toHaveLength(1);
  expect(field.getAttribute('aria-invalid')).toBe('true');
  expect(field.getAttribute('aria-describedby')?.split(' ')).toContain(region.id);
});

test('a limit that cannot be read is said, and belongs to its field', async () => {
  render(<LimitField name="money" label="money, everything in" />);
  const field = screen.getByRole('textbox', { name: /my limit ?, money/ });
  const region = screen.getByRole('status');
  fireEvent.change(field, { target: { value: 'lots' } });
  await waitFor(() => expect(region.textContent).toMatch(/cannot find a number/));
  expect(field.getAttribute('aria-describedby')).toBe(region.id);
});
