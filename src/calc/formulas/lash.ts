import type { Formula } from '../core/formula.ts';
import { sum } from './constants.ts';

/** Error on the diameter, m, where the cross slide turns back: twice the play of nut, bearing and bracket together. */
export const lashOnDiameter: Formula<{ lashes: readonly number[] }> = {
  id: 'lash-on-diameter',
  label: 'Play seen on the diameter',
  equation: 'error = 2 × Σ lashes',
  tex: '\\Delta D = 2\\sum b',
  inputs: { lashes: 'm' },
  unit: 'm',
  source: { ref: 'common practice, no source', at: 'a diameter grows by twice what the slide moves' },
  valid: {},
  unverified: 'Follows from what a diameter is; nothing is published to hold it against.',
  compute: ({ lashes }) => 2 * sum(lashes),
};

/** Stiffness of parts that give one after another, N/m: nut, screw, bearing, bracket. Softer than the softest of them. */
export const axisStiffness: Formula<{ stiffnesses: readonly number[] }> = {
  id: 'axis-stiffness',
  label: 'Stiffness of the whole axis',
  equation: 'stiffness = 1 ÷ Σ (1 ÷ stiffnesses)',
  tex: '\\frac1c = \\sum\\frac1{c_i}',
  inputs: { stiffnesses: 'N/m' },
  unit: 'N/m',
  source: {
    ref: 'common practice, no source',
    at: 'springs in a row',
  },
  valid: {},
  unverified: 'Springs in a row; no published axis with all its parts is known to us.',
  compute: ({ stiffnesses }) => 1 / sum(stiffnesses.map((stiffness) => 1 / stiffness)),
};

export const lashFormulas = [lashOnDiameter, axisStiffness] as const;
