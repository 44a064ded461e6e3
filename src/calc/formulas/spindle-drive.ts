import type { Formula } from '../core/formula.ts';

/**
 * Torque that a motor gives on a frequency drive, N·m: the rated torque up to the frequency on its plate,
 * falling as one over the frequency above. Slow running also heats a motor that cools itself by its own fan.
 */
export const driveTorqueAtFrequency: Formula<{
  ratedTorque: number;
  baseFrequency: number;
  frequency: number;
}> = {
  id: 'drive-torque-at-frequency',
  label: 'Motor torque on a frequency drive',
  equation: 'torque = rated torque × min(1, base frequency ÷ frequency)',
  tex: 'T = T_N\\,\\min\\!\\left(1, \\frac{f_N}{f}\\right)',
  inputs: { ratedTorque: 'N·m', baseFrequency: 'Hz', frequency: 'Hz' },
  unit: 'N·m',
  source: {
    ref: 'common practice, no source',
    at: 'steady torque below the plate frequency, steady power above it; from 60 to about 140 Hz at most',
  },
  valid: { baseFrequency: [50, 60], frequency: [0, 140] },
  unverified: 'Drive makers state the rule without a worked figure; some motors lose power from about 85 Hz.',
  compute: ({ ratedTorque, baseFrequency, frequency }) =>
    ratedTorque * Math.min(1, baseFrequency / frequency),
};

/**
 * Drive frequency at which one belt position reaches a spindle speed, Hz. Speeds in rev/s, `motorSpeed` is that at
 * `baseFrequency`; the synchronous speed there keeps the limit for a motor that runs unloaded. Ratio is motor turns
 * to one spindle turn. The cap to set is that of the fastest belt: set for a slow one it overspeeds the others.
 */
export const driveFrequencyCap: Formula<{
  spindleSpeed: number;
  ratio: number;
  motorSpeed: number;
  baseFrequency: number;
}> = {
  id: 'drive-frequency-cap',
  label: 'Drive frequency for a spindle speed in one belt position',
  equation: 'frequency = base frequency × spindle speed × ratio ÷ motor speed',
  tex: 'f = f_N\\,\\frac{n_s\\,i}{n_m}',
  inputs: { spindleSpeed: 'rev/s', ratio: '1', motorSpeed: 'rev/s', baseFrequency: 'Hz' },
  unit: 'Hz',
  source: { ref: 'plain mechanics', at: 'motor speed goes with the frequency, spindle speed with the ratio' },
  valid: { baseFrequency: [50, 60] },
  unverified: 'Follows from the belt ratio; no published worked figure is known.',
  compute: ({ spindleSpeed, ratio, motorSpeed, baseFrequency }) =>
    (baseFrequency * spindleSpeed * ratio) / motorSpeed,
};

export const spindleDriveFormulas = [driveTorqueAtFrequency, driveFrequencyCap] as const;
