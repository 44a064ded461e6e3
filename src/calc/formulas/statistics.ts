import type { Formula } from '../core/formula.ts';

/**
 * What a list of risks costs on average: chance (0 to 1) times impact, added. Use the mean of each band, never its
 * most likely figure: bands with a long tail cost more than that.
 */
export const expectedRisk: Formula<{ chances: readonly number[]; impacts: readonly number[] }> = {
  id: 'expected-risk',
  label: 'What the risks cost on average',
  equation: 'expected = sum of chance × impact',
  tex: 'E = \\sum p_i\\,c_i',
  inputs: { chances: '1', impacts: '$' },
  unit: '$',
  source: { ref: 'tenstep.com, expected monetary value', at: 'contingency table' },
  valid: { chances: [0, 1] },
  compute: ({ chances, impacts }) =>
    chances.reduce((total, chance, at) => total + chance * (impacts[at] ?? Number.NaN), 0),
};

/** Quantile of a sample, type 7: position (n − 1) p, straight between neighbours. The sample may be in any order. */
export const sampleQuantile: Formula<{ values: readonly number[]; p: number }> = {
  id: 'quantile',
  label: 'Figure that a share of the sample stays below',
  equation: 'position = (count − 1) × p, straight between neighbours',
  tex: 'h = (n - 1)\\,p',
  inputs: { values: '1', p: '1' },
  unit: '1',
  source: {
    ref: 'Hyndman and Fan, Sample quantiles in statistical packages, The American Statistician 50(4), 1996',
    at: 'definition 7',
  },
  valid: { p: [0, 1] },
  compute: ({ values, p }) => {
    const sorted = [...values].sort((a, b) => a - b);
    const place = (sorted.length - 1) * p;
    const under = sorted[Math.floor(place)] ?? Number.NaN;
    const above = sorted[Math.ceil(place)] ?? Number.NaN;
    return under + (place - Math.floor(place)) * (above - under);
  },
};

export const statisticsFormulas = [expectedRisk, sampleQuantile] as const;
