import { breakEvenPieces, internalRate, paybackYears, presentValue } from '../../src/calc/formulas/worth.ts';
import { type PublishedRow, row } from './row.ts';

const openStax = (module: string, at = 'worked example') =>
  ({
    source: {
      ref: `OpenStax Principles of Accounting, Volume 2: Managerial Accounting, module ${module}`,
      at,
    },
    provenance: 'seen',
  }) as const;

const breakEvenRows = (
  [
    ['18,000 over 80', 18_000, 80, '225', '1'],
    ['18,000 and a target of 16,000 over 80', 34_000, 80, '425', '1'],
    ['18,000 and 24,000 after 40 per cent tax over 80', 18_000 + 24_000 / 0.6, 80, '725', '1'],
    ['18,000 over 0.80 of each dollar', 18_000, 0.8, '22500', '$'],
    ['14,000 over 250', 14_000, 250, '56', '1'],
  ] as const
).map(([what, once, savedPerPiece, printed, unit]) =>
  row(breakEvenPieces, { ...openStax('m68116'), what, inputs: { once, savedPerPiece }, printed, unit }),
);

const paybackRows = (
  [
    ['150,000 at 20,000 a year', 150_000, [20_000], '7.5'],
    ['50,000 at 15,000 a year', 50_000, [15_000], '3.33'],
    ['40,000, uneven', 40_000, [10_000, 10_000, 5_000, 5_000, 7_500, 7_500], '5.33'],
  ] as const
).map(([what, cost, yearly, printed]) =>
  row(paybackYears, { ...openStax('m68090'), what, inputs: { cost, yearly }, printed, unit: 'year' }),
);

/** Paid now, then the same sum every year. */
const even = (first: number, each: number, years: number): number[] => [
  first,
  ...Array.from({ length: years }, () => each),
];

const valueRows = (
  [
    ['m68093', '1 a year for 7 years at 5 per cent', even(0, 1, 7), 0.05, '5.786'],
    ['m68093', '1 a year for 9 years at 8 per cent', even(0, 1, 9), 0.08, '6.247'],
    ['m68094', '30,000 out, 10,000 back for 5 years at 8 per cent', even(-30_000, 10_000, 5), 0.08, '9927'],
    ['m00103', '50,000 out, 40,000 back for 3 years at 10 per cent', even(-50_000, 40_000, 3), 0.1, '49474'],
    ['m00103', '50,000 out, 30,000 back for 6 years at 10 per cent', even(-50_000, 30_000, 6), 0.1, '80658'],
  ] as const
).map(([module, what, flows, rate, printed]) =>
  row(presentValue, { ...openStax(module), what, inputs: { flows, rate }, printed, unit: '$' }),
);

const drillPress = row(presentValue, {
  ...openStax('m68093', 'worked example of a drill press'),
  what: '50,000 out, 10,000 back for 7 years at 5 per cent',
  inputs: { flows: even(-50_000, 10_000, 7), rate: 0.05 },
  printed: '7860',
  unit: '$',
  looser: { by: 5 / 7860, because: 'the source multiplies 10,000 by a table factor of three decimals' },
});

const rateRows = (
  [
    ['m68094', even(-30_000, 10_000, 5), '19.86'],
    ['m68093', even(-312_000, 49_944, 9), '8'],
    ['m68093', even(-60_500, 13_256, 7), '12'],
  ] as const
).map(([module, flows, printed]) =>
  row(internalRate, {
    ...openStax(module),
    what: `${-flows[0]!} out, ${flows[1]} back for ${flows.length - 1} years`,
    inputs: { flows },
    as: (rate) => rate * 100,
    printed,
    unit: '%',
  }),
);

export const worthRows: readonly PublishedRow[] = [
  ...breakEvenRows,
  ...paybackRows,
  ...valueRows,
  drillPress,
  ...rateRows,
];
