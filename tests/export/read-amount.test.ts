import fc from 'fast-check';
import { expect, it, test } from 'vitest';
import { markOf, readAmount, readQuantity } from '../../src/export/read-amount.ts';
import { readDay } from '../../src/export/read-day.ts';

it.each([
  ['12.50', '12.50', undefined],
  ['12,50', '12.50', undefined],
  ['1.234,56', '1234.56', undefined],
  ['1,234.56', '1234.56', undefined],
  ['1.234.567', '1234567', undefined],
  ['0,125', '0.125', undefined],
  ['CHF 1’234.50', '1234.50', 'CHF'],
  ['1 234,50 €', '1234.50', 'EUR'],
  ['$1,299.00', '1299.00', 'USD'],
  ['£ 5', '5', 'GBP'],
  ['12,-', '12', undefined],
  ['.5', '0.5', undefined],
  ['007', '7', undefined],
])('%j is %s', (cell, amount, currency) => {
  expect(readAmount(cell, undefined)).toEqual({ amount, ...(currency ? { currency } : {}) });
});

it.each([
  ['1,234', /two ways/],
  ['1.234', /two ways/],
  ['-5', /below zero/],
  ['−3', /below zero/],
  ['(5)', /not known/],
  ['twelve', /not a number/],
  ['NaN', /not a number/],
  ['Infinity', /not a number/],
  ['1e5', /not a number/],
  ['1E999', /not a number/],
  ['1.2.3', /not a number/],
  ['1,23,4', /not a number/],
  ['12..5', /not a number/],
  ['99999999999999999', /not a number/],
  ['¥500', /more than one currency/],
  ['5 EUR/pc', /not known/],
  ['=1+1', /not/],
  ['', /not a number/],
])('%j is a fault', (cell, fault) => {
  expect(readAmount(cell, undefined).fault).toMatch(fault);
  expect(readAmount(cell, undefined).amount).toBeUndefined();
});

test('the mark of the file settles what could be read in two ways', () => {
  expect(readAmount('1,234', '.').amount).toBe('1234');
  expect(readAmount('1,234', ',').amount).toBe('1.234');
});

test('a quantity may carry a short word', () => {
  expect(readQuantity('5 pcs', undefined).amount).toBe('5');
  expect(readQuantity('2,5 m', undefined).amount).toBe('2.5');
  expect(readQuantity('five', undefined).fault).toMatch(/not a number/);
});

const grouped = (digits: string, mark: string) => digits.replace(/\B(?=(\d{3})+$)/g, mark);

test('any amount to the cent comes back from both ways of writing it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1e11 }), (n) => {
      const [whole, cents] = [String(Math.floor(n / 100)), String(n % 100).padStart(2, '0')];
      for (const [mark, group] of [
        ['.', ','],
        [',', '.'],
        [',', ' '],
        ['.', '’'],
      ] as const)
        expect(readAmount(`${grouped(whole, group)}${mark}${cents}`, undefined)).toEqual({
          amount: `${whole}.${cents}`,
        });
    }),
  );
});

test('no text makes the reader throw or give anything but plain decimal text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.constantFrom('.', ',', undefined), (text, mark) => {
      const { amount, fault } = readAmount(text, mark);
      markOf(text);
      expect(fault !== undefined || /^\d{1,12}(\.\d{1,6})?$/.test(amount!)).toBe(true);
    }),
    { numRuns: 3000 },
  );
});

it.each([
  ['2026-11-03', '2026-11-03'],
  ['2026/1/3', '2026-01-03'],
  ['03.11.2026', '2026-11-03'],
  ['13/03/2026', '2026-03-13'],
  ['03/13/2026', '2026-03-13'],
  ['2026-11-03T10:00:00Z', '2026-11-03'],
])('%s is the day %s', (cell, day) => {
  expect(readDay(cell)).toEqual({ day });
});

it.each(['11/03/2026', '2026-02-30', 'today', '31.02.2026', '1/2/26', ''])('%j is no day', (cell) => {
  expect(readDay(cell).fault).toBeDefined();
});
