import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atLeastLimit, atMost, between } from '../../../src/calc/core/check.ts';
import { assumed } from '../../../src/calc/core/quantity.ts';

const length = (value: number | undefined) =>
  value === undefined ? undefined : assumed(value, 'm', 'set for a test');
const words = { id: 'gap', label: 'Gap', remedy: 'Move it.', decisions: ['stand'] };
const draft = (value: number | undefined, limit: number | undefined) => ({
  ...words,
  value: length(value),
  limit: length(limit),
});
const range = (value: number | undefined, low: number | undefined, high: number | undefined) =>
  between({ ...draft(value, high), limitLow: length(low), comfort: 1.5 });

describe('at most', () => {
  test.each([
    [4.001, 'stop', 0.99975],
    [4, 'look', 1],
    [3.21, 'look', 1.24611],
    [3.2, 'ok', 1.25],
    [1, 'ok', 4],
  ])('%d m against 4 m, comfortable at 1.25 times: %s', (value, result, margin) => {
    const check = atMost({ ...draft(value, 4), comfort: 1.25 });
    expect(check).toMatchObject({ result, sense: 'at-most', ...words });
    expect(check.margin).toBeCloseTo(margin, 5);
    expect(check).not.toHaveProperty('comfort');
  });

  test('what suffices is good where no comfort is asked', () => {
    expect(atMost(draft(4, 4)).result).toBe('ok');
    expect(atMost(draft(4.001, 4)).result).toBe('stop');
  });
});

describe('at least', () => {
  test.each([
    [3.999, 'stop', 0.99975],
    [4, 'look', 1],
    [4.99, 'look', 1.2475],
    [5, 'ok', 1.25],
  ])('%d m against 4 m, comfortable at 1.25 times: %s', (value, result, margin) => {
    const check = atLeastLimit({ ...draft(value, 4), comfort: 1.25 });
    expect(check).toMatchObject({ result, sense: 'at-least', ...words });
    expect(check.margin).toBeCloseTo(margin, 5);
  });

  test('what suffices is good where no comfort is asked', () => {
    expect(atLeastLimit(draft(4, 4)).result).toBe('ok');
    expect(atLeastLimit(draft(3.999, 4)).result).toBe('stop');
  });
});

describe('between', () => {
  test.each([
    [1.99, 'stop', 0.995],
    [2, 'look', 1],
    [4, 'ok', 2],
    [7, 'look', 8 / 7],
    [8, 'look', 1],
    [8.1, 'stop', 8 / 8.1],
  ])('%d m between 2 and 8 m, comfortable at 1.5 times: %s', (value, result, margin) => {
    const check = range(value, 2, 8);
    expect(check).toMatchObject({ result, sense: 'between', ...words });
    expect(check.margin).toBeCloseTo(margin, 9);
    expect(check).not.toHaveProperty('comfort');
  });

  test('at either end is good where no comfort is asked', () => {
    const tight = (value: number) => between({ ...draft(value, 8), limitLow: length(2) }).result;
    expect([2, 8, 1.9, 8.1].map(tight)).toEqual(['ok', 'ok', 'stop', 'stop']);
  });

  test('one end alone says nothing', () => {
    expect(range(4, undefined, 8)).toMatchObject({ result: 'not-yet', margin: undefined });
    expect(range(4, 2, undefined)).toMatchObject({ result: 'not-yet', margin: undefined });
    expect(range(undefined, 2, 8)).toMatchObject({ result: 'not-yet', margin: undefined });
  });
});

test('a missing side is not yet judged, never good and never bad', () => {
  for (const judge of [atMost, atLeastLimit]) {
    expect(judge(draft(undefined, 4))).toMatchObject({ result: 'not-yet', margin: undefined });
    expect(judge(draft(4, undefined))).toMatchObject({ result: 'not-yet', margin: undefined });
  }
});

test('nothing at all against a limit is good by any number of times, and the number is finite', () => {
  expect(atMost(draft(0, 4))).toMatchObject({ result: 'ok', margin: Number.MAX_VALUE });
  expect(atLeastLimit(draft(4, 0))).toMatchObject({ result: 'ok', margin: Number.MAX_VALUE });
});

test('more of what there is and less of what is needed never make a check worse', () => {
  const size = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(size, size, fc.double({ min: 1, max: 10, noNaN: true }), (have, need, more) => {
      const margin = atLeastLimit(draft(have, need)).margin!;
      expect(atLeastLimit(draft(have * more, need)).margin).toBeGreaterThanOrEqual(margin);
      expect(atMost(draft(need, have)).margin).toBeCloseTo(margin, 9);
    }),
  );
});
