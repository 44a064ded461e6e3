import { microstepTorque, stepperLoadAngle } from '../../src/calc/formulas/stepper.ts';
import { type PublishedRow, row } from './row.ts';

const table = {
  ref: 'Table of microstep currents, forum.v1e.com thread 28822, post 16',
  at: 'share of the full-step figure: the same sines as the torque',
} as const;

const sineRow = (microsteps: number, printed: string): PublishedRow =>
  row(microstepTorque, {
    what: `${microsteps} to a full step`,
    source: table,
    provenance: 'seen',
    inputs: { holdingTorque: 1, microsteps },
    as: (torque) => torque * 100,
    printed,
    unit: '%',
  });

export const stepperRows: readonly PublishedRow[] = [
  sineRow(1, '100'),
  sineRow(2, '70.71'),
  sineRow(4, '38.27'),
  sineRow(8, '19.51'),
  sineRow(16, '9.80'),
  sineRow(32, '4.91'),
  sineRow(64, '2.45'),
  sineRow(128, '1.23'),
  sineRow(256, '0.61'),
  row(stepperLoadAngle, {
    what: '19.51 % of the holding torque is an eighth of a full step, the same table read backwards',
    source: table,
    provenance: 'seen',
    inputs: { loadTorque: 0.1951, holdingTorque: 1 },
    printed: '0.125',
    unit: 'full steps',
  }),
];
