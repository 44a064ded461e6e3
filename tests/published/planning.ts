import { criticalPath } from '../../src/calc/formulas/critical-path.ts';
import { learningTime, learningTotal, pathProbability, pertMean } from '../../src/calc/formulas/planning.ts';
import { activitiesOf, nameOf, sevenArrows, thirteenArrows, WEEK } from './networks.ts';
import { type PublishedRow, row } from './row.ts';

const taylor = 'Taylor, Introduction to Management Science';

const networkRows = (
  [
    ['first network', sevenArrows, '20'],
    ['second network', thirteenArrows, '38'],
  ] as const
).flatMap(([name, network, length]) => {
  const draft = {
    source: { ref: taylor, at: 'ch. 8 solutions, networks of 7 and 13 arrows' },
    provenance: 'seen' as const,
    inputs: { activities: activitiesOf(network) },
    unit: 'week',
  };
  const slacks = network.map((arrow, at) =>
    row(criticalPath, {
      ...draft,
      what: `${name}, slack of activity ${nameOf(arrow)}`,
      as: ({ activities }) => activities[at]!.float / WEEK,
      printed: String(arrow.times[4]),
    }),
  );
  return [
    row(criticalPath, {
      ...draft,
      what: `${name}, length`,
      as: (plan) => plan.length / WEEK,
      printed: length,
    }),
    ...slacks,
  ];
});

const critical = [
  [5, 8, 17, '9'],
  [3, 5, 7, '5'],
  [4, 6, 8, '6'],
  [3, 4, 5, '4'],
] as const;
const weeks = { ref: taylor, at: 'ch. 8, critical activities 1, 3, 5 and 7 of the worked network' };
const meanRows = critical.map(([low, likely, high, printed]) =>
  row(pertMean, {
    what: `${low}, ${likely} and ${high} weeks`,
    source: weeks,
    provenance: 'seen',
    inputs: { low: low * WEEK, likely: likely * WEEK, high: high * WEEK },
    as: (seconds) => seconds / WEEK,
    printed,
    unit: 'week',
  }),
);

const chanceRow = row(pathProbability, {
  what: 'a chain of 24 weeks with a variance of 5, over within 28 weeks',
  source: weeks,
  provenance: 'seen',
  inputs: {
    means: [9, 5, 6, 4].map((week) => week * WEEK),
    deviations: critical.map(([low, , high]) => ((high - low) / 6) * WEEK),
    deadline: 28 * WEEK,
  },
  printed: '0.9633',
  unit: '1',
  looser: { by: 0.0002, because: 'the source rounds z to 1.79 to read its table' },
});

const minutes = (
  [
    [30, 8, '15.36', 'validtests, practice item after Chase, Operations Management'],
    [50, 4, '32', 'business-analysis-made-easy, learning curve'],
  ] as const
).map(([first, n, printed, ref]) =>
  row(learningTime, {
    what: `${first} minutes for the first, piece ${n} at 80 per cent`,
    source: { ref, at: 'worked example' },
    provenance: 'seen',
    inputs: { first: first * 60, rate: 0.8, n },
    as: (seconds) => seconds / 60,
    printed,
    unit: 'minute',
  }),
);

const table = { ref: 'Learning curve coefficients, tutorsglobe', at: 'table of unit and total times' };
const coefficients = (
  [
    [0.8, 10, '0.477', '6.315'],
    [0.8, 20, '0.381', '10.485'],
    [0.75, 10, '0.385', undefined],
    [0.75, 20, '0.288', '8.828'],
  ] as const
).flatMap(([rate, n, unit, total]) => {
  const draft = {
    what: `piece ${n} at ${rate * 100} per cent, of the first`,
    source: table,
    provenance: 'seen' as const,
    inputs: { first: 1, rate, n },
    unit: '1',
  };
  const one = row(learningTime, { ...draft, printed: unit });
  return total === undefined
    ? [one]
    : [one, row(learningTotal, { ...draft, what: `all of ${n} at ${rate * 100} per cent`, printed: total })];
});

/**
 * The same power law read as the average of all pieces so far (Wright) instead of the time of the last one (Crawford):
 * the average of two takes 80 per cent, so that the second alone takes 60, and the average of four 64.
 */
const wright = {
  ref: 'Wideman, project management glossary papers, appendix 2',
  at: 'cumulative average against unit',
};
const averages = (
  [
    ['piece 2 where the average of two takes 80 per cent', 2, (average: number) => 2 * average - 1, '0.60'],
    ['average of four where that of two takes 80 per cent', 4, Number, '0.64'],
  ] as const
).map(([what, n, as, printed]) =>
  row(learningTime, {
    what,
    source: wright,
    provenance: 'seen',
    inputs: { first: 1, rate: 0.8, n },
    as,
    printed,
    unit: '1',
  }),
);

export const planningRows: readonly PublishedRow[] = [
  ...networkRows,
  ...meanRows,
  chanceRow,
  ...minutes,
  ...coefficients,
  ...averages,
];
