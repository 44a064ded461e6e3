import { describe, expect, it, test } from 'vitest';
import { atLeastLimit, atMost, between, type Check } from '../../src/calc/core/check.ts';
import { assumed } from '../../src/calc/core/quantity.ts';
import { layoutLimit, WIDTH } from '../../src/islands/shared/limit-layout.ts';

const amps = (value: number) => assumed(value, 'A', 'for a test');
const draft = (value: number) => ({
  id: 'x',
  label: 'x',
  value: amps(value),
  limit: amps(12),
  remedy: '',
  decisions: [],
});
const VALUES = [-3, 0, 0.01, 2, 5, 11.9, 12, 12.5, 18, 400];
const senses: readonly [string, (value: number) => Check][] = [
  ['at most', (value) => atMost(draft(value))],
  ['at least', (value) => atLeastLimit(draft(value))],
  ['between', (value) => between({ ...draft(value), limitLow: amps(4) })],
];

describe.each(senses)('a limit drawn: %s', (_, judged) => {
  it.each(VALUES)('shows %d inside the line where the check holds, outside where it does not', (value) => {
    const check = judged(value);
    const drawn = layoutLimit(check)!;
    const inside = drawn.value >= drawn.from - 1e-9 && drawn.value <= drawn.to + 1e-9;
    const holds = (check.sense === 'at-most' || value >= (check.limitLow?.value ?? 12)) && value <= 12;
    expect(inside).toBe(check.sense === 'at-least' ? value >= 12 : holds);
    expect(drawn.value).toBeGreaterThan(0);
    expect(drawn.value).toBeLessThan(WIDTH);
  });
});

test('nothing is drawn where a figure is missing, or the limit is nothing', () => {
  expect(layoutLimit(atMost({ ...draft(3), value: undefined }))).toBeUndefined();
  expect(layoutLimit(atMost({ ...draft(3), limit: undefined }))).toBeUndefined();
  expect(layoutLimit(atMost({ ...draft(3), limit: amps(0) }))).toBeUndefined();
  expect(layoutLimit(between({ ...draft(3), limitLow: amps(12) }))).toBeUndefined();
});
