import { describe, expect, test } from 'vitest';
import { bandMean, bandQuantile, bandVariance, sumOfBands } from '../../../src/calc/formulas/bands.ts';
import { expectedRisk, sampleQuantile } from '../../../src/calc/formulas/statistics.ts';

describe('worked by hand, no published source', () => {
  test('two risks: likely times likely is not the mean', () => {
    const mean = (low: number, likely: number, high: number) =>
      bandMean.compute({ low, likely, high, shape: 'triangular' });
    const chance = mean(0.15, 0.3, 0.5);
    const average = expectedRisk.compute({
      chances: [chance, chance],
      impacts: [mean(5, 25, 90), mean(0, 90, 350)],
    });
    expect(average).toBeCloseTo(59.11, 2);
    expect(expectedRisk.compute({ chances: [0.3, 0.3], impacts: [25, 90] })).toBeCloseTo(34.5, 12);
  });

  test('ten triangles of 80, 100, 180 apart from one another', () => {
    const every = (value: number) => Array.from({ length: 10 }, () => value);
    const bands = { lows: every(80), likelies: every(100), highs: every(180), shape: 'triangular' } as const;
    const apart = sumOfBands.compute({ ...bands, correlation: 0 });
    expect(apart.mean).toBeCloseTo(1200, 9);
    expect(Math.sqrt(apart.variance)).toBeCloseTo(68.313, 3);
    const together = sumOfBands.compute({ ...bands, correlation: 1 });
    expect(Math.sqrt(together.variance / apart.variance)).toBeCloseTo(Math.sqrt(10), 10);
  });

  test('4, 5, 10 weeks', () => {
    const at = (shape: 'triangular' | 'pert', p: number) =>
      bandQuantile.compute({ low: 4, likely: 5, high: 10, shape, p });
    expect([0.1, 0.5, 0.9].map((p) => at('triangular', p).toFixed(4))).toEqual([
      '4.7746',
      '6.1270',
      '8.2679',
    ]);
    expect([0.1, 0.5, 0.9].map((p) => at('pert', p).toFixed(4))).toEqual(['4.4560', '5.5117', '7.1116']);
  });
});

describe('edges', () => {
  const narrow = { low: 3, likely: 3, high: 3 } as const;
  test.each(['triangular', 'pert'] as const)('%s: a band of no width, and one out of order', (shape) => {
    expect(bandQuantile.compute({ ...narrow, shape, p: 0.3 })).toBe(3);
    expect(bandVariance.compute({ ...narrow, shape })).toBe(0);
    const upset = { low: 5, likely: 3, high: 4, shape };
    expect(bandMean.compute(upset)).toBeNaN();
    expect(bandVariance.compute(upset)).toBeNaN();
    expect(bandQuantile.compute({ ...upset, p: 0.5 })).toBeNaN();
    const over = { low: 3, likely: 5, high: 4, shape };
    expect(bandMean.compute(over)).toBeNaN();
    expect(bandQuantile.compute({ ...narrow, shape, p: 1.1 })).toBeNaN();
    expect(bandQuantile.compute({ low: 3, likely: 4, high: 5, shape, p: -0.1 })).toBeNaN();
  });
  test('an empty sample has no quantile; a risk without an impact has no sum', () => {
    expect(sampleQuantile.compute({ values: [], p: 0.5 })).toBeNaN();
    expect(expectedRisk.compute({ chances: [0.5], impacts: [] })).toBeNaN();
  });
});
