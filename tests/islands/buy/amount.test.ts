import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseAmount } from '../../../src/islands/buy/amount.ts';

const read = (typed: string) => {
  const amount = parseAmount(typed);
  return amount.kind === 'amount' ? amount.text : amount.kind;
};

describe('an amount as owners type it', () => {
  it.each([
    ['52', '52'],
    ['$ 52', '52'],
    ['1,234.50', '1234.50'],
    ['1.234,50', '1234.50'],
    ['1 234,5', '1234.5'],
    ['12,5', '12.5'],
    ['1,234.00', '1234.00'],
    ['€12.99', '12.99'],
    ['12.99 EUR', '12.99'],
    ["1'234.00", '1234.00'],
    ['007', '7'],
    ['.5', '0.5'],
    ['', 'empty'],
    ['   ', 'empty'],
  ])('reads %j as %s', (typed, said) => expect(read(typed)).toBe(said));

  it.each([
    '-5',
    '−5',
    'forty',
    '1e5',
    '0x10',
    'NaN',
    '=1+1',
    '12.34.56,7',
    '1,234',
    '1.2345678',
    '9'.repeat(13),
    '$',
  ])('refuses %j with words that say what to do', (typed) => {
    const amount = parseAmount(typed);
    expect(amount.kind).toBe('unreadable');
    expect(amount.kind === 'unreadable' && amount.say.length).toBeGreaterThan(20);
  });

  it('takes up a currency that stands beside the figure', () => {
    expect(parseAmount('12.99 EUR')).toEqual({ kind: 'amount', text: '12.99', currency: 'EUR' });
    expect(parseAmount('52')).toEqual({ kind: 'amount', text: '52' });
  });

  it('loses no cent of any amount, whichever way it is grouped', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 999_999_999 }),
        fc.integer({ min: 0, max: 99 }),
        (whole, cents) => {
          const tail = String(cents).padStart(2, '0');
          const grouped = String(whole).replace(/\B(?=(\d{3})+$)/g, ',');
          const swapped = grouped.replaceAll(',', '.');
          expect(read(`${grouped}.${tail}`)).toBe(`${whole}.${tail}`);
          expect(read(`${swapped},${tail}`)).toBe(`${whole}.${tail}`);
        },
      ),
    );
  });
});
