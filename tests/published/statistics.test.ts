// Published figures for the statistics that the builds stand on. The source stands beside each check.
import beta from '@stdlib/stats-base-dists-beta';
import normal from '@stdlib/stats-base-dists-normal';
import { quantileSorted } from 'd3-array';
import { quantileSorted as simpleQuantile } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { type Band, pertMean } from '../../src/calc/core/band.ts';
import { quantile, sortColumn } from '../../src/calc/cost/columns.ts';
import { exp, ln, normalCdf, normalQuantile } from '../../src/calc/cost/exact-math.ts';
import { pertByScore } from '../../src/calc/cost/pert.ts';

describe('quantile, type 7', () => {
  // Hyndman and Fan 1996, definition 7; the eleven values are the worked example of the DolphinDB quantile page.
  const eleven = sortColumn(Float64Array.of(6, 47, 49, 15, 42, 41, 7, 39, 43, 40, 36));
  test.each([
    [0.25, 25.5],
    [0.5, 40],
    [0.75, 42.5],
  ])('p %d', (p, printed) => expect(quantile(eleven, p)).toBeCloseTo(printed, 12));

  test('agrees with two general libraries', () => {
    const ten = Float64Array.from({ length: 10 }, (_, at) => at + 1);
    for (const p of [0, 0.1, 0.37, 0.5, 0.8, 0.9, 1]) {
      // d3-array 3.2.5 implements R-7; simple-statistics agrees for odd spacing, checked at the median only.
      expect(quantile(ten, p)).toBeCloseTo(quantileSorted([...ten], p)!, 12);
    }
    expect(quantile(ten, 0.5)).toBe(simpleQuantile([...ten], 0.5));
  });
});

describe('PERT mean', () => {
  // Taylor, Introduction to Management Science, ch. 8: activities 1, 3, 5 and 7 of the worked network.
  test.each<[Band, number]>([
    [[5, 8, 17], 9],
    [[3, 5, 7], 5],
    [[4, 6, 8], 6],
    [[3, 4, 5], 4],
  ])('%j', (band, printed) => expect(pertMean(band)).toBe(printed));
});

describe('PERT quantile by normal score', () => {
  const oracle = (p: number, [low, likely, high]: Band): number => {
    const mode = (likely - low) / (high - low);
    return low + (high - low) * beta.quantile(p, 1 + 4 * mode, 1 + 4 * (1 - mode));
  };
  const bands: Band[] = [
    [4, 5, 10],
    [0, 0, 600],
    [35, 65, 130],
    [250, 650, 2000],
    [10, 40, 40],
    [1, 2, 3],
  ];
  test.each(bands)('band %d %d %d within 0.1 %% of its width (@stdlib beta 0.3.1)', (...band) => {
    const at = pertByScore(band as unknown as Band);
    for (let p = 0.001; p < 1; p += 0.007) {
      const width = band[2]! - band[0]!;
      expect(
        Math.abs(at(normalQuantile(p)) - oracle(p, band as unknown as Band)) / width,
        `p ${p}`,
      ).toBeLessThan(0.001);
    }
  });
});

describe('arithmetic that is the same everywhere', () => {
  test('normal distribution against a printed table and a library', () => {
    // Standard normal table, z = 1.79: .9633 (Taylor, ch. 8, probability of finishing within 28 weeks).
    expect(normalCdf(1.79)).toBeCloseTo(0.9633, 4);
    for (let z = -5; z <= 5; z += 0.13) expect(normalCdf(z)).toBeCloseTo(normal.cdf(z, 0, 1), 12);
    // z for 90 %: 1.2815515655446006 (@stdlib normal 0.3.1).
    expect(normalQuantile(0.9)).toBeCloseTo(1.2815515655446006, 10);
  });
  test('logarithm and exponential against the built-in ones', () => {
    for (let x = 0.001; x < 50; x *= 1.7) {
      expect(ln(x)).toBeCloseTo(Math.log(x), 12);
      expect(exp(-x) / Math.exp(-x)).toBeCloseTo(1, 12);
    }
    expect(exp(-800)).toBe(0);
  });
});
