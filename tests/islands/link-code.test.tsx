// The sizes of codes and what fits into them: ISO/IEC 18004:2015, table 1 (squares on a side) and table 7 (bytes at level L).
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { drawCode } from '../../src/islands/shared/draw-code.ts';
import { LinkCode } from '../../src/islands/shared/LinkCode.tsx';

afterEach(cleanup);

const text = (bytes: number): string => 'a'.repeat(bytes);

test.each([
  [17, 21],
  [18, 25],
  [271, 57],
  [858, 97],
  [1732, 137],
])('%d bytes take a code of %d squares', (bytes, squares) => {
  expect(drawCode(text(bytes))?.squares).toBe(squares);
});

test('a small code is still 25 mm wide, a large one as wide as its squares need on a printer of 300 dots an inch', () => {
  expect(drawCode(text(17))?.side).toBe(25);
  expect(drawCode(text(1732))?.side).toBeCloseTo((137 + 8) * 4 * (25.4 / 300), 6);
});

test('the largest code that is drawn holds what the standard says of version 35, and not a byte more', () => {
  expect(drawCode(text(2303))?.squares).toBe(157);
  expect(drawCode(text(2304))).toBeUndefined();
});

test('on a screen every square is as many whole dots wide', async () => {
  render(<LinkCode link={text(17)} asked onScreen />);
  const code = await screen.findByRole('img', { name: 'The link as a code to photograph' });
  expect(code.getAttribute('width')).toBe(`${(21 + 8) * 3}px`);
});

test('a link that is too long for a code is said to be', async () => {
  render(<LinkCode link={text(3000)} asked />);
  expect(await screen.findByText(/too long for a code/)).toBeTruthy();
});

test('nothing is drawn before it is asked for', async () => {
  const { container, rerender } = render(<LinkCode link={text(100)} />);
  await new Promise((done) => setTimeout(done, 700));
  expect(container.querySelector('svg')).toBeNull();
  rerender(<LinkCode link={text(100)} asked />);
  expect(await screen.findByRole('img', { name: 'The link as a code to photograph' })).toBeTruthy();
});
