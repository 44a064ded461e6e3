import { describe, expect, test } from 'vitest';
import type { Bar, ChoiceSwing, UnknownSwing } from '../../../src/calc/choosing.ts';
import { namedTicks, trackOf } from '../../../src/islands/shared/track.ts';
import {
  choicesIn,
  markOfChange,
  narrowsText,
  saySwing,
  unknownsIn,
} from '../../../src/islands/worth/swings/kinds.ts';
import { breakEvenText, paybackText, yearsText } from '../../../src/islands/worth/words.ts';

const end = (by: number, blocked = false) => ({
  option: 'any',
  by,
  blocked: blocked ? [{ rule: 'r', say: 'Something else is chosen.', clash: [] }] : [],
});
const bar = (least: number, most: number, far?: number): Bar => ({
  least: end(least),
  most: end(most),
  blockedLeast: undefined,
  blockedMost: far === undefined ? undefined : end(far, true),
});
const choice = (decision: string, money: Bar, hours: Bar): ChoiceSwing => ({
  decision,
  status: 'answered',
  now: ['any'],
  money,
  hours,
  weeks: bar(0, 0),
});

test('choices: the widest of the kind first; what moves nothing is left out, a blocked end is not nothing', () => {
  const all = [
    choice('a', bar(-400, 65), bar(0, 0)),
    choice('b', bar(0, 1600), bar(-9, 0)),
    choice('c', bar(0, 2), bar(0, 30)),
    choice('d', bar(0, 0, 800), bar(0, 0)),
  ];
  expect(choicesIn('money', all).map(({ decision }) => decision)).toEqual(['b', 'a', 'd']);
  expect(choicesIn('hours', all).map(({ decision }) => decision)).toEqual(['c', 'b']);
  expect(choicesIn('weeks', all)).toEqual([]);
});

test('unknowns: the same, and what each narrows', () => {
  const still = { now: 100, then: 100 };
  const unknown = (id: string, low: number, high: number): UnknownSwing => ({
    id,
    kind: 'fact',
    name: id,
    lowMeans: '',
    highMeans: '',
    findOut: '',
    money: { low, high },
    hours: { low: 200, high: 200 },
    weeks: { low: 9, high: 9 },
    narrows: { money: { now: 2700, then: 1400 }, hours: still, weeks: still },
  });
  const all = [unknown('small', 5000, 5100), unknown('large', 4000, 6000), unknown('none', 5000, 5001)];
  expect(unknownsIn('money', all).map(({ id }) => id)).toEqual(['large', 'small']);
  expect(unknownsIn('hours', all)).toEqual([]);
  expect(narrowsText('money', all[0]!)).toBe('narrows 16 of 20 ways from $2,700 apart to $1,400');
  expect(narrowsText('hours', all[0]!)).toBeUndefined();
});

test('changes carry their sign, and nothing is nothing', () => {
  expect(saySwing('money', 1612)).toBe('+$1,600');
  expect(saySwing('money', -380)).toBe('−$380');
  expect(saySwing('hours', -9.2)).toBe('−9.2 h');
  expect([saySwing('money', 3), saySwing('hours', 0.01), saySwing('weeks', -0.01)]).toEqual(['0', '0', '0']);
  expect(markOfChange('money', 0)).toBe('as now');
});

test('a track keeps its order and leaves room for the figures at both ends', () => {
  const { at, ticks } = trackOf([-920, 0, 1400]);
  expect(at(-920)).toBeGreaterThan(15);
  expect(at(1400)).toBeLessThan(85);
  expect(at(-920)).toBeLessThan(at(0));
  expect(ticks).toContain(0);
  const named = namedTicks({ at, ticks }, 0, 'as now').map(at);
  expect(named.length).toBeGreaterThan(0);
  expect(named.every((place) => Math.abs(place - at(0)) > 10)).toBe(true);
  expect(Number.isFinite(trackOf([5, 5]).at(5))).toBe(true);
});

describe('words', () => {
  test.each([
    [undefined, 'never'],
    [0.02, 'under a month'],
    [0.5, '6 months'],
    [1, '1 year'],
    [3.24, '3.2 years'],
    [12.6, '13 years'],
  ])('%s years', (years, say) => expect(yearsText(years)).toBe(say));

  test('pay-back says in how many ways it never comes', () => {
    const one = { perHour: 10, buildingCounts: true, twenty: [] };
    expect(paybackText({ ...one, never: 0, typical: 4 })).toBe('4 years');
    expect(paybackText({ ...one, never: 3, typical: 4 })).toBe('4 years; never in 3 of 20');
    expect(paybackText({ ...one, never: 12, typical: undefined })).toBe(
      'not in half of the ways; never in 12 of 20',
    );
    expect(paybackText({ ...one, never: 20, typical: undefined })).toBe('never');
  });

  test('break-even is a whole number of pieces', () => {
    expect([undefined, 1, 5.17, 6].map(breakEvenText)).toEqual([
      'never',
      'any batch',
      '6 pieces',
      '6 pieces',
    ]);
  });
});
