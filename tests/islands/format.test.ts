import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { showIn } from '../../src/islands/shared/currency.ts';
import {
  chanceOfTwenty,
  counted,
  countWithin,
  exactBoth,
  exactMoney,
  hours,
  hoursDifference,
  hoursMark,
  hoursRange,
  lengthText,
  listed,
  middleHalf,
  money,
  moneyDifference,
  moneyMark,
  moneyRange,
  ofTwenty,
  plain,
  significant,
  weeks,
  weeksMark,
  weeksRange,
} from '../../src/islands/shared/format.ts';

describe('money', () => {
  it.each([
    [0, '$0'],
    [4, '$0'],
    [7, '$10'],
    [87, '$90'],
    [134, '$130'],
    [3849, '$3,800'],
    [12_345, '$12,000'],
    [-632, '−$630'],
    [-3, '$0'],
  ])('says %d dollars as %s', (n, said) => expect(money(n)).toBe(said));

  it.each([
    [3810, 4890, '$3,800–4,900'],
    [4402, 4399, '$4,400'],
    [-160, 90, '−$160 to +$90'],
    [-820, -480, '−$820 to −$480'],
    [0, 56, '$0–60'],
  ])('says %d to %d as %s', (lo, hi, said) => expect(moneyRange(lo, hi)).toBe(said));

  test('differences are worked out for the reader', () => {
    expect(moneyDifference(-634)).toBe('$630 less');
    expect(moneyDifference(61)).toBe('$60 more');
    expect(moneyDifference(2)).toBe('the same money');
  });

  test('what was typed is shown to the cent', () => {
    expect(exactMoney(5300)).toBe('$5,300');
    expect(exactMoney(1234.5)).toBe('$1,234.50');
  });

  test('a kept sum is said in dollars, and beside it in the money of the owner', () => {
    expect(exactBoth('86.11')).toBe('$86.11');
    showIn({ code: 'EUR', perDollar: '0.9' });
    expect(exactBoth('86.11')).toBe('$86.11 (€77.50)');
    showIn(undefined);
  });
});

describe('hours and weeks', () => {
  test('two figures, the unit once', () => {
    expect(hours(187.4)).toBe('190 h');
    expect(hours(9.46)).toBe('9.5 h');
    expect(hoursRange(152, 238)).toBe('150–240 h');
    expect(hoursRange(6, 6.01)).toBe('6 h');
    expect(hoursDifference(-9)).toBe('9 h less');
    expect(hoursDifference(0.02)).toBe('the same hours');
    expect(weeks(1)).toBe('1 week');
    expect(weeks(1.54)).toBe('1.5 weeks');
    expect(weeksRange(8.2, 23.7)).toBe('8–24 weeks');
    expect(weeksRange(0, 0)).toBe('0 weeks');
  });
});

test('round figures on a scale stand as they are', () => {
  expect([moneyMark(12_500), moneyMark(3811.2)]).toEqual(['$12,500', '$3,800']);
  expect([hoursMark(125), hoursMark(124.7)]).toEqual(['125 h', '120 h']);
  expect([weeksMark(12.5), weeksMark(12.3)]).toEqual(['12.5', '12']);
});

describe('counts', () => {
  test('one denominator everywhere', () => {
    expect(ofTwenty(17)).toBe('17 of 20');
    expect(chanceOfTwenty(0.31)).toBe('about 6 of 20');
    expect(chanceOfTwenty(0.01)).toBe('less than 1 of 20');
    expect(chanceOfTwenty(0)).toBe('none of 20');
    expect(countWithin([1, 2, 3, 4], 3)).toBe(3);
    expect(middleHalf([1, 2, 3, 4, 5, 6, 7, 8])).toEqual({ from: 3, to: 6 });
    expect(middleHalf([])).toEqual({ from: 0, to: 0 });
  });

  test('words', () => {
    expect(counted(1, 'question')).toBe('1 question');
    expect(counted(3, 'answer')).toBe('3 answers');
    expect(listed(['a'])).toBe('a');
    expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
    expect(listed([])).toBe('');
  });
});

describe('lengths', () => {
  it.each([
    [0.25, 'metric', '250 mm'],
    [0.0015, 'metric', '1.5 mm'],
    [0.254, 'inch', '10 in'],
    [0.009525, 'inch', '0.375 in'],
    [1.2, 'metric', '1,200 mm'],
  ] as const)('says %d m in %s units as %s', (m, units, said) => expect(lengthText(m, units)).toBe(said));
});

describe('any number', () => {
  const anything = fc.double();

  test('never shows NaN or infinity, and never a minus before zero', () => {
    fc.assert(
      fc.property(anything, (n) => {
        for (const said of [money(n), hours(n), weeks(n), plain(n, 2), lengthText(n, 'inch')]) {
          expect(said).not.toMatch(/NaN|Infinity|−\$?0(?![\d.,])/);
        }
      }),
    );
  });

  test('rounding to digits is idempotent', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e12, max: 1e12 }), fc.integer({ min: 1, max: 6 }), (n, digits) => {
        expect(significant(significant(n, digits), digits)).toBe(significant(n, digits));
      }),
    );
  });

  test('money comes in tens of dollars', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e6, max: 1e6 }), (n) => {
        expect(Number(money(n).replace(/[^\d]/g, '')) % 10).toBe(0);
      }),
    );
  });
});
