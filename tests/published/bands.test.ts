// Bands against general statistics libraries. The library and its version stand beside each check.
import beta from '@stdlib/stats-base-dists-beta';
import triangular from '@stdlib/stats-base-dists-triangular';
import { quantileSorted } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandMean, bandQuantile, bandVariance } from '../../src/calc/formulas/bands.ts';
import { sampleQuantile } from '../../src/calc/formulas/statistics.ts';

const bands = [
  [4, 5, 10],
  [0, 0, 600],
  [35, 65, 130],
  [10, 40, 40],
  [1, 2, 3],
] as const;
const shares = [0, 0.001, 0.05, 0.1, 0.37, 0.5, 0.8, 0.9, 0.999, 1];

describe.each(bands)('band %d, %d, %d', (low, likely, high) => {
  const width = high - low;

  test('triangular mean, variance and quantiles (@stdlib triangular 0.2.2)', () => {
    const band = { low, likely, high, shape: 'triangular' } as const;
    expect(bandMean.compute(band)).toBeCloseTo(triangular.mean(low, high, likely), 10);
    expect(bandVariance.compute(band) / triangular.variance(low, high, likely)).toBeCloseTo(1, 10);
    for (const p of shares) {
      const oracle = triangular.quantile(p, low, high, likely);
      expect((bandQuantile.compute({ ...band, p }) - oracle) / width, `p ${p}`).toBeCloseTo(0, 10);
    }
  });

  test('PERT quantiles (@stdlib beta 0.3.1)', () => {
    const place = (likely - low) / width;
    for (const p of shares) {
      const oracle = low + width * beta.quantile(p, 1 + 4 * place, 5 - 4 * place);
      const ours = bandQuantile.compute({ low, likely, high, shape: 'pert', p });
      expect((ours - oracle) / width, `p ${p}`).toBeCloseTo(0, 9);
    }
  });
});

test('quantile type 7 of any sample (d3-array 3.2.5)', () => {
  const sample = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(sample, fc.double({ min: 0, max: 1, noNaN: true }), (values, p) => {
      const sorted = [...values].sort((a, b) => a - b);
      expect(sampleQuantile.compute({ values, p })).toBeCloseTo(quantileSorted(sorted, p)!, 8);
    }),
  );
});
