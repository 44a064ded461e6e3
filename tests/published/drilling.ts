import { drillThrustCarbide, drillTorqueCarbide } from '../../src/calc/formulas/drilling-carbide.ts';
import { drillThrustHandbook, drillTorqueHandbook } from '../../src/calc/formulas/drilling-handbook.ts';
import { type PublishedRow, row } from './row.ts';

const carbide = { ref: 'ISCAR rotating-tool catalogue 2017', at: 'p. 601, worked example' };
const example = {
  drill: 'solid-carbide',
  diameter: 0.022,
  feed: 0.00015,
  specificForce: 2200e6,
  edgeAngle: Math.PI / 2,
} as const;
const cutDecimals = { by: 0.001, because: 'the source drops the decimals instead of rounding' };

const carbideRows = [
  row(drillThrustCarbide, {
    what: '22 mm at 0.15 mm a turn, 2,200 N/mm²',
    source: carbide,
    provenance: 'seen',
    inputs: example,
    printed: '2286',
    unit: 'N',
    looser: cutDecimals,
  }),
  row(drillTorqueCarbide, {
    what: '22 mm at 0.15 mm a turn, 2,200 N/mm²',
    source: carbide,
    provenance: 'seen',
    inputs: example,
    printed: '20',
    unit: 'N·m',
  }),
  row(drillTorqueCarbide, {
    what: '22 mm at 0.15 mm a turn; the source prints the power at 200 m/min through 75 %',
    source: carbide,
    provenance: 'seen',
    inputs: example,
    as: (torque) => (torque * (200 / 60 / 0.011)) / 0.75 / 1000,
    printed: '8.06',
    unit: 'kW',
    looser: cutDecimals,
  }),
];

const book = "Machinery's Handbook, 31st edition";
const tables = { ref: book, at: 'p. 1153, tables 7 to 9' };

/** The torque of a split drill with a work factor of 40,000 is the diameter factor times the feed factor. */
const bare = { workFactor: 40000, web: 'split', wear: 1 } as const;

const diameterRows = (
  [
    [8, '42.22'],
    [12.5, '94.28'],
  ] as const
).map(([millimetre, printed]) =>
  row(drillTorqueHandbook, {
    what: `the diameter factor of the torque alone, ${millimetre} mm`,
    source: tables,
    provenance: 'seen',
    inputs: { ...bare, diameter: millimetre / 1000, feed: 0.001 },
    printed,
    unit: '1',
  }),
);

const feedRows = (
  [
    [0.2, '0.276'],
    [0.3, '0.382'],
  ] as const
).map(([millimetre, printed]) =>
  row(drillTorqueHandbook, {
    what: `the feed factor alone, ${millimetre} mm a turn`,
    source: tables,
    provenance: 'seen',
    inputs: { ...bare, diameter: 0.001, feed: millimetre / 1000 },
    printed,
    unit: '1',
  }),
);

const thrustRows = (
  [
    [8, '5.28'],
    [12.5, '7.54'],
  ] as const
).map(([millimetre, printed]) =>
  row(drillThrustHandbook, {
    what: `the diameter factor of the thrust alone, ${millimetre} mm, chisel term taken off`,
    source: tables,
    provenance: 'seen',
    inputs: { workFactor: 20, web: 'split', wear: 1, diameter: millimetre / 1000, feed: 0.001 },
    as: (thrust) => (thrust - 0.007 * 20 * millimetre ** 2 * 0.001) / 1.1,
    printed,
    unit: '1',
  }),
);

const workedExample = {
  diameter: 0.875 * 0.0254,
  feed: 0.008 * 0.0254,
  workFactor: 24000,
  web: 'ordinary',
  wear: 1.3,
} as const;
const worked = {
  what: '7/8 inch, 0.008 inch a turn, steel of 200 HB, normal wear',
  source: { ref: book, at: 'p. 1152, worked example' },
  provenance: 'memory',
  inputs: workedExample,
  looser: {
    by: 0.015,
    because: 'the example is in inches; the metric form of the book has rounded constants',
  },
} as const;

const workedRows = [
  row(drillThrustHandbook, { ...worked, as: (newton) => newton / 4.4482216, printed: '2313', unit: 'lbf' }),
  row(drillTorqueHandbook, {
    ...worked,
    as: (torque) => torque / 0.11298483,
    printed: '559',
    unit: 'in·lbf',
  }),
];

export const drillingRows: readonly PublishedRow[] = [
  ...carbideRows,
  ...diameterRows,
  ...feedRows,
  ...thrustRows,
  ...workedRows,
];
