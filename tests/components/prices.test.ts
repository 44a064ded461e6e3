import { expect, test } from 'vitest';
import { bandText } from '../../src/components/prices.ts';

test('the price of one is as fine as its reader needs', () => {
  expect(bandText(1, 4)).toBe('$1–4');
  expect(bandText(0.25, 3.4)).toBe('$0.25–3');
  expect(bandText(40, 131)).toBe('$40–130');
  expect(bandText(5, 5)).toBe('$5');
});
