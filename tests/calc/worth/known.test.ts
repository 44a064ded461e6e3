import { expect, it } from 'vitest';
import { round } from '../../../src/calc/worth/known.ts';

it.each([
  [0, '0'],
  [0.44, '0.4'],
  [9.94, '9.9'],
  [9.96, '10'],
  [10, '10'],
  [14.6, '15'],
  [99.4, '99'],
  [100, '100'],
  [104, '100'],
  [126, '130'],
  [994, '990'],
  [1000, '1,000'],
  [1049, '1,000'],
  [9951, '10,000'],
  [10_000, '10,000'],
  [12_345, '12,000'],
  [1_234_567, '1,235,000'],
])('a sentence promises no more than the sum knows: %d is %s', (value, said) => {
  expect(round(value)).toBe(said);
});
