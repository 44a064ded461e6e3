import { enclosureAirflow, enclosureArea, ventilatedRise } from '../../src/calc/formulas/heat.ts';
import { capacitorBleedTime, motorCircuit } from '../../src/calc/formulas/supply.ts';
import { type PublishedRow, row } from './row.ts';

const motor = {
  what: '5 horsepower at 230 V, single-phase, 28 A',
  source: {
    ref: 'Electrician’s Math and Basic Electrical Formulas, electricianmath.com',
    at: 'one motor, worked example',
  },
  provenance: 'seen',
  inputs: { fullLoadCurrent: 28 },
  unit: 'A',
} as const;

const discharge = {
  source: {
    ref: 'OpenStax College Physics, module m42363',
    at: 'discharge of a defibrillator, worked example',
  },
  provenance: 'seen',
  as: (seconds: number) => seconds * 1000,
  unit: 'ms',
} as const;
const heart = { capacitance: 8e-6, resistance: 1000, from: 10_000 };

/** 3,160 cubic feet a minute carry off 1 kW at a rise of 1 °F. */
const air = {
  source: {
    ref: 'Comair Rotron, fan selection notes; Parker prints the same',
    at: 'CFM = 3160 × kW ÷ rise in °F',
  },
  provenance: 'seen',
} as const;
const CFM = 0.3048 ** 3 / 60;

export const supplyRows: readonly PublishedRow[] = [
  row(motorCircuit, { ...motor, as: ({ conductor }) => conductor, printed: '35' }),
  row(motorCircuit, { ...motor, as: ({ breaker }) => breaker, printed: '70' }),
  row(capacitorBleedTime, {
    ...discharge,
    what: '8 µF through 1 kilohm, to 0.368 of the start: one time constant',
    inputs: { ...heart, to: 3680 },
    printed: '8.00',
  }),
  row(capacitorBleedTime, {
    ...discharge,
    what: '8 µF through 1 kilohm, 10 kV down to 498 V',
    inputs: { ...heart, to: 498 },
    printed: '24.0',
  }),
];

export const heatRows: readonly PublishedRow[] = [
  row(enclosureArea, {
    what: '2.0 × 0.8 × 0.6 m, free on all sides',
    source: { ref: 'Stego calculation sheet 0911', at: 'worked example' },
    provenance: 'seen',
    inputs: { height: 2, width: 0.8, depth: 0.6, mounting: 'free' },
    printed: '5.712',
    unit: 'm²',
  }),
  row(enclosureAirflow, {
    ...air,
    what: '1 kW at a rise of 1 °F',
    inputs: { loss: 1000, rise: 5 / 9 },
    as: (flow) => flow / CFM,
    printed: '3.16e3',
    unit: 'ft³/min',
  }),
  row(ventilatedRise, {
    ...air,
    what: '1 kW into 1,000 cubic feet a minute, the two multiplied',
    inputs: { loss: 1000, airflow: 1000 * CFM },
    as: (kelvin) => ((kelvin * 9) / 5) * 1000,
    printed: '3.16e3',
    unit: 'ft³/min °F',
  }),
];
