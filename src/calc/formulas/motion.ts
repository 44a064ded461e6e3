import type { Formula } from '../core/formula.ts';

/** From motor to slide: `ratio` is motor turns for one turn of the screw, `microsteps` pulses for one full step. */
type Train = { stepsPerTurn: number; microsteps: number; ratio: number; lead: number };
const trainInputs = { stepsPerTurn: '1', microsteps: '1', ratio: '1', lead: 'm' } as const;

const thk = 'THK general catalogue 513-1E, ball screws';

/** Pulses for a metre of travel, 1/m. Exact thread ratios are kept elsewhere as whole numbers, never from this. */
export const stepsPerLength: Formula<Train> = {
  id: 'steps-per-length',
  label: 'Steps for a length of travel',
  equation: 'steps = stepsPerTurn × microsteps × ratio ÷ lead',
  tex: 'k = \\frac{N\\,m\\,i}{l}',
  inputs: trainInputs,
  unit: '1/m',
  source: { ref: thk, at: 'p. B15-71, feed for each pulse' },
  valid: {},
  compute: ({ stepsPerTurn, microsteps, ratio, lead }) => (stepsPerTurn * microsteps * ratio) / lead,
};

/** Pulses a second, Hz, at a speed of the slide in m/s. */
export const pulseRate: Formula<Train & { speed: number }> = {
  id: 'pulse-rate',
  label: 'Step pulses a second',
  equation: 'rate = stepsPerTurn × microsteps × ratio ÷ lead × speed',
  tex: 'f = \\frac{N\\,m\\,i}{l}\\,v',
  inputs: { ...trainInputs, speed: 'm/s' },
  unit: 'Hz',
  source: { ref: thk, at: 'p. B15-71, feed for each pulse, times the speed' },
  valid: {},
  unverified:
    'Follows from the steps for a length, which are checked; no published pulse rate is known to us.',
  compute: ({ speed, ...train }) => stepsPerLength.compute(train) * speed,
};

/** Speed of the motor, rev/s, at a speed of the slide in m/s. */
export const motorSpeed: Formula<{ speed: number; lead: number; ratio: number }> = {
  id: 'motor-speed',
  label: 'Speed of the motor',
  equation: 'motor speed = speed × ratio ÷ lead',
  tex: 'n_M = \\frac{v\\,i}{l}',
  inputs: { speed: 'm/s', lead: 'm', ratio: '1' },
  unit: 'rev/s',
  source: { ref: 'Yaskawa Σ-V-MD user manual', at: 'section 2.2.2, rotation speed' },
  valid: {},
  compute: ({ speed, lead, ratio }) => (speed * ratio) / lead,
};

/** Most pulses a second, Hz, that a program can make which switches a line once in each beat of `basePeriod` seconds. */
export const softwareStepLimit: Formula<{ basePeriod: number }> = {
  id: 'software-step-limit',
  label: 'Most step pulses a program can time',
  equation: 'rate = 1 ÷ (2 × basePeriod)',
  tex: 'f = \\frac{1}{2\\,t_b}',
  inputs: { basePeriod: 's' },
  unit: 'Hz',
  source: { ref: 'common practice, no source', at: 'one beat for the pulse, one for the gap' },
  valid: {},
  unverified: 'Drives and programs add waiting of their own; no published figure is known to us.',
  compute: ({ basePeriod }) => 1 / (2 * basePeriod),
};

export const motionFormulas = [stepsPerLength, pulseRate, motorSpeed, softwareStepLimit] as const;
