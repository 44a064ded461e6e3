// Cost estimate classes, as published, against our table.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classOf, estimateClasses } from '../../src/calc/cost/grade-table.ts';

/**
 * AACE International Recommended Practice 18R-97, table 1: class, maturity of the definition in per cent, range on the
 * low and on the high side in per cent. The wide ends and the maturities up to class 2 were seen in a glossary that
 * quotes the practice (soma-website, entry “AACE 18R-97”); the narrow ends, and the maturity of class 1 as the
 * revision of August 2020 states it, are from memory.
 */
const published = [
  [5, 0, 2, -50, -20, 30, 100],
  [4, 1, 15, -30, -15, 20, 50],
  [3, 10, 40, -20, -10, 10, 30],
  [2, 30, 75, -15, -5, 5, 20],
  [1, 65, 100, -10, -3, 3, 15],
] as const;

describe('estimate classes', () => {
  test.each(published)('class %i', (number, from, to, lowWide, lowNarrow, highNarrow, highWide) => {
    const row = estimateClasses.find((each) => each.class === number)!;
    const percent = (share: number): number => Math.round(share * 100);
    expect(row.maturity.map(percent)).toEqual([from, to]);
    expect(row.low.map(percent)).toEqual([lowWide, lowNarrow]);
    expect(row.high.map(percent)).toEqual([highNarrow, highWide]);
  });

  test('a job has the roughest class that its maturity has not passed, and more definition never makes it worse', () => {
    expect([0, 0.02, 0.021, 0.15, 0.4, 0.75, 0.76, 1].map((share) => classOf(share).class)).toEqual([
      5, 5, 4, 4, 3, 2, 1, 1,
    ]);
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, (a, b) => {
        expect(classOf(Math.max(a, b)).class).toBeLessThanOrEqual(classOf(Math.min(a, b)).class);
      }),
    );
  });
});
