import { bandMean, bandQuantile, bandVariance, sumOfBands } from '../../src/calc/formulas/bands.ts';
import { expectedRisk, sampleQuantile } from '../../src/calc/formulas/statistics.ts';
import { type PublishedRow, row } from './row.ts';

const library = (name: string) => ({ ref: `@stdlib/stats-base-dists-${name} 0.2.2`, at: 'printed examples' });
const taylor = {
  ref: 'Taylor, Introduction to Management Science',
  at: 'ch. 8, activities of the worked network',
};

/** low, likely, high, then mean and variance as printed. */
const pert: readonly (readonly [number, number, number, string, string])[] = [
  [5, 8, 17, '9', '4'],
  [3, 5, 7, '5', '0.444'],
  [4, 6, 8, '6', '0.444'],
  [3, 4, 5, '4', '0.111'],
];
const triangular: readonly (readonly [number, number, number, string, string])[] = [
  [0, 0.8, 1, '0.6', '0.047'],
  [4, 5, 12, '7.0', '3.167'],
  [2, 5, 8, '5.0', '1.5'],
];

const momentRows = (['pert', 'triangular'] as const).flatMap((shape) =>
  (shape === 'pert' ? pert : triangular).flatMap(([low, likely, high, mean, variance]) => {
    const draft = {
      what: `${low}, ${likely}, ${high}, ${shape === 'pert' ? 'PERT' : 'triangular'}`,
      provenance: 'seen' as const,
      inputs: { low, likely, high, shape },
      unit: '1',
    };
    const source = (moment: string) => (shape === 'pert' ? taylor : library(`triangular-${moment}`));
    return [
      row(bandMean, { ...draft, source: source('mean'), printed: mean }),
      row(bandVariance, { ...draft, source: source('variance'), printed: variance }),
    ];
  }),
);

const quantileRows = (
  [
    [0.9, -1, 0, 1, '0.553'],
    [0.1, -1, 0.5, 1, '-0.452'],
    [0.1, -20, -2, 0, '-14.0'],
    [0.8, 0, 0, 20, '11.056'],
  ] as const
).map(([p, low, likely, high, printed]) =>
  row(bandQuantile, {
    what: `share ${p} of ${low}, ${likely}, ${high}, triangular`,
    source: library('triangular-quantile'),
    provenance: 'seen',
    inputs: { low, likely, high, shape: 'triangular', p },
    printed,
    unit: '1',
  }),
);

/** Equal triangles from 0 to 2 have a variance of 1/6 each; 0.2 between every pair. */
const correlationRows = (
  [
    [10, '40'],
    [30, '62'],
    [100, '78'],
    [1000, '93'],
  ] as const
).map(([count, printed]) => {
  const every = (value: number) => Array.from({ length: count }, () => value);
  return row(sumOfBands, {
    what: `${count} equal items at 0.2: per cent of the spread that is lost where correlation is left out`,
    source: {
      ref: 'Book, Why correlation matters in cost estimating, 1999',
      at: 'underestimate of the spread',
    },
    provenance: 'memory',
    inputs: { lows: every(0), likelies: every(1), highs: every(2), shape: 'triangular', correlation: 0.2 },
    as: ({ variance }) => 100 * (1 - Math.sqrt(count / 6 / variance)),
    printed,
    unit: '%',
  });
});

const risks = [
  [0.8, 10_000, '8000'],
  [0.3, 30_000, '9000'],
  [0.5, 8_000, '4000'],
  [0.1, 40_000, '4000'],
  [0.3, 20_000, '6000'],
  [0.25, 10_000, '2500'],
] as const;
const contingency = {
  source: { ref: 'tenstep.com, expected monetary value', at: 'contingency table' },
  provenance: 'seen',
  unit: '$',
} as const;
const riskRows = [
  row(expectedRisk, {
    ...contingency,
    what: 'six risks together',
    inputs: { chances: risks.map(([chance]) => chance), impacts: risks.map(([, impact]) => impact) },
    printed: '33500',
  }),
  ...risks.map(([chance, impact, printed]) =>
    row(expectedRisk, {
      ...contingency,
      what: `a chance of ${chance} of losing ${impact}`,
      inputs: { chances: [chance], impacts: [impact] },
      printed,
    }),
  ),
];

const sampleRows = (
  [
    [0.25, '25.5'],
    [0.5, '40'],
    [0.75, '42.5'],
  ] as const
).map(([p, printed]) =>
  row(sampleQuantile, {
    what: `share ${p} of eleven values`,
    source: { ref: 'DolphinDB documentation, quantile', at: 'worked example, linear' },
    provenance: 'seen',
    inputs: { values: [6, 47, 49, 15, 42, 41, 7, 39, 43, 40, 36], p },
    printed,
    unit: '1',
  }),
);

export const statisticsRows: readonly PublishedRow[] = [
  ...momentRows,
  ...quantileRows,
  ...correlationRows,
  ...riskRows,
  ...sampleRows,
];
