// Quantiles by buckets are those of sorting.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { oneOf, threeOf } from '../../../src/calc/cost/buckets.ts';
import { quantile, sortColumn } from '../../../src/calc/cost/columns.ts';
import { BUILDS } from '../../../src/calc/cost/strata.ts';

const filled = (values: readonly number[]): Float64Array =>
  Float64Array.from({ length: BUILDS }, (_, build) => values[build % values.length]!);

describe('quantiles by buckets', () => {
  test('are the same as by sorting, whatever the values', () => {
    const values = fc.array(fc.integer({ min: -1_000_000, max: 50_000_000 }), {
      minLength: 1,
      maxLength: 400,
    });
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 1, noNaN: true }), (given, p) => {
        const column = filled(given);
        const sorted = sortColumn(column);
        const { p10, p50, p90 } = threeOf(column, 1);
        expect([p10, p50, p90]).toEqual([0.1, 0.5, 0.9].map((each) => quantile(sorted, each)));
        expect(oneOf(column, p)).toBe(quantile(sorted, p));
      }),
    );
  });

  test('a column that is one value everywhere has that value', () => {
    expect(threeOf(filled([-1234]), 100)).toEqual({ p10: -12.34, p50: -12.34, p90: -12.34 });
  });
});
