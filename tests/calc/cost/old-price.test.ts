import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Carried, carryForward } from '../../../src/calc/cost/old-price.ts';

const ok = (found: Carried): Extract<Carried, { ok: true }> => {
  if (!found.ok) throw new Error(found.say);
  return found;
};

describe('an old price', () => {
  test('100 dollars of 2015 are 135.83 in 2025, by the published list; ten years make a band of 30 %', () => {
    const { likely, low, high, spread, toYear } = ok(
      carryForward({ amount: '100', year: 2015, toYear: 2025 }),
    );
    expect([likely, low, high, spread, toYear]).toEqual(['135.83', '95.08', '176.58', 0.3, 2025]);
  });

  test('an edition later than the list: carried to its last year, and said so', () => {
    const { toYear, limits, spread } = ok(carryForward({ amount: '59.90', year: 2020, toYear: 2026 }));
    expect(toYear).toBe(2025);
    expect(spread).toBeCloseTo(0.22, 12);
    expect(limits.join(' ')).toContain('The list ends in 2025');
    expect(limits.join(' ')).toContain('household basket');
  });

  test.each([
    [{ amount: '10', year: 2009, toYear: 2026 }, '2009 is not in it'],
    [{ amount: '10', year: 2026, toYear: 2026 }, '2026 is not in it'],
    [{ amount: '10', year: 2020, toYear: 2019 }, 'cannot be carried back'],
    [{ amount: 'ten', year: 2020, toYear: 2026 }, 'Type the price in digits'],
    [{ amount: '1,000', year: 2020, toYear: 2026 }, 'Type the price in digits'],
    [{ amount: '10', year: Number.NaN, toYear: 2026 }, 'is not in it'],
  ])('%j is refused with a message', (old, words) => {
    const found = carryForward(old);
    expect(found.ok ? '' : found.say).toContain(words);
  });

  test('the band holds the likely price and is never narrower for an older price', () => {
    const year = fc.integer({ min: 2010, max: 2025 });
    fc.assert(
      fc.property(year, year, fc.integer({ min: 1, max: 1e7 }), (a, b, cents) => {
        const at = (from: number) =>
          ok(carryForward({ amount: (cents / 100).toFixed(2), year: from, toYear: 2026 }));
        const [older, newer] = [at(Math.min(a, b)), at(Math.max(a, b))];
        expect(older.spread).toBeGreaterThanOrEqual(newer.spread);
        expect(Number(older.low)).toBeLessThanOrEqual(Number(older.likely));
        expect(Number(older.high)).toBeGreaterThanOrEqual(Number(older.likely));
      }),
    );
  });
});
