import { expect, test } from 'vitest';
import { atLeastLimit, atMost, between } from '../../src/calc/core/check.ts';
import { assumed } from '../../src/calc/core/quantity.ts';
import { marginText } from '../../src/islands/shared/margin.ts';

const volts = (value: number) => assumed(value, 'V', 'for a test');
const draft = (value: number, limit: number) => ({
  id: 'x',
  label: 'x',
  value: volts(value),
  limit: volts(limit),
  remedy: '',
  decisions: [],
});

test.each([
  [60, 45, '1.3 times what is allowed'],
  [40, 45, '89 % of what is allowed'],
  [45, 45, 'just what is allowed'],
  [0.1, 45, 'far less than allowed'],
])('%d V where %d V are the most: %s', (value, limit, words) => {
  expect(marginText(atMost(draft(value, limit)))).toBe(words);
});

test.each([
  [72, 45, '1.6 times what is needed'],
  [30, 45, '0.67 of what is needed'],
  [45, 45, 'just what is needed'],
])('%d V where %d V are the least: %s', (value, limit, words) => {
  expect(marginText(atLeastLimit(draft(value, limit)))).toBe(words);
});

test('between two limits there is an inside and an outside', () => {
  expect(marginText(between({ ...draft(5, 10), limitLow: volts(2) }))).toBe('between the two limits');
  expect(marginText(between({ ...draft(1, 10), limitLow: volts(2) }))).toBe('outside the two limits');
});
