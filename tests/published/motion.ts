import { motorSpeed, stepsPerLength } from '../../src/calc/formulas/motion.ts';
import { type PublishedRow, row } from './row.ts';

const feedTable = { ref: 'THK general catalogue 513-1E, ball screws', at: 'p. B15-71' } as const;
const sigmaV = { ref: 'Yaskawa Σ-V-MD user manual', at: 'section 2.2.2, p. 2-5' } as const;

const feedRow = (leadMm: number, pulses: number): PublishedRow =>
  row(stepsPerLength, {
    what: `lead ${leadMm} mm, ${pulses} pulses a turn`,
    source: feedTable,
    provenance: 'seen',
    inputs: { stepsPerTurn: pulses, microsteps: 1, ratio: 1, lead: leadMm / 1000 },
    as: (steps) => 1000 / steps,
    printed: '0.02',
    unit: 'mm a pulse',
  });

const speedRow = (
  source: PublishedRow['source'],
  what: string,
  inputs: { speed: number; lead: number; ratio: number },
  printed: string,
): PublishedRow =>
  row(motorSpeed, {
    what,
    source,
    provenance: 'seen',
    inputs,
    as: (speed) => speed * 60,
    printed,
    unit: 'turns a minute',
  });

export const motionRows: readonly PublishedRow[] = [
  feedRow(20, 1000),
  feedRow(30, 1500),
  feedRow(40, 2000),
  feedRow(60, 3000),
  feedRow(80, 4000),
  speedRow(
    sigmaV,
    '15 m/min on a lead of 10 mm, at the screw',
    { speed: 0.25, lead: 0.01, ratio: 1 },
    '1500',
  ),
  speedRow(sigmaV, '15 m/min on a lead of 10 mm, behind 2:1', { speed: 0.25, lead: 0.01, ratio: 2 }, '3000'),
  speedRow(
    { ref: 'THK general catalogue 513-1E, ball screws', at: 'p. B15-70' },
    '1 m/s on a lead of 20 mm',
    { speed: 1, lead: 0.02, ratio: 1 },
    '3000',
  ),
];
