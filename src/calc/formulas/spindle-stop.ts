import type { Formula } from '../core/formula.ts';

const straightRamp = { ref: 'plain mechanics', at: 'speed falls on a straight line to a stop' } as const;
const rampOnly = 'Plain mechanics of a straight ramp; no published worked figure is known.';

/** Energy in everything that turns with the spindle, J; inertia in kg·m², speed in rev/s. OpenStax College Physics. */
export const stopEnergy: Formula<{ inertia: number; speed: number }> = {
  id: 'stop-energy',
  label: 'Energy to take out at a stop',
  equation: 'energy = inertia × (2 × π × speed)² ÷ 2',
  tex: 'E = \\tfrac{1}{2} J\\,(2\\pi n)^2',
  inputs: { inertia: 'kg·m²', speed: 'rev/s' },
  unit: 'J',
  source: { ref: 'OpenStax, College Physics', at: 'section 10.4, rotational kinetic energy' },
  valid: {},
  compute: ({ inertia, speed }) => (inertia * (2 * Math.PI * speed) ** 2) / 2,
};

/** Power into the brake resistor over the whole stop, W; energy in J, stop time in s. */
export const stopPowerMean: Formula<{ energy: number; time: number }> = {
  id: 'stop-power-mean',
  label: 'Mean power into the brake resistor',
  equation: 'mean power = energy ÷ stop time',
  tex: '\\bar{P} = \\frac{E}{t}',
  inputs: { energy: 'J', time: 's' },
  unit: 'W',
  source: straightRamp,
  valid: {},
  unverified: rampOnly,
  compute: ({ energy, time }) => energy / time,
};

/** Power into the brake resistor at the start of a straight ramp, W: twice the mean. It sets the pulse rating. */
export const stopPowerPeak: Formula<{ energy: number; time: number }> = {
  id: 'stop-power-peak',
  label: 'Peak power into the brake resistor',
  equation: 'peak power = 2 × energy ÷ stop time',
  tex: '\\hat{P} = \\frac{2 E}{t}',
  inputs: { energy: 'J', time: 's' },
  unit: 'W',
  source: straightRamp,
  valid: {},
  unverified: rampOnly,
  compute: ({ energy, time }) => (2 * energy) / time,
};

/** Torque that the stop puts on the nose of the spindle, N·m; it loosens a screwed chuck. kg·m², rev/s and s. */
export const stopTorque: Formula<{ inertia: number; speed: number; time: number }> = {
  id: 'stop-torque',
  label: 'Torque on the spindle nose while stopping',
  equation: 'torque = inertia × 2 × π × speed ÷ stop time',
  tex: 'T = \\frac{J\\,2\\pi n}{t}',
  inputs: { inertia: 'kg·m²', speed: 'rev/s', time: 's' },
  unit: 'N·m',
  source: straightRamp,
  valid: {},
  unverified: rampOnly,
  compute: ({ inertia, speed, time }) => (inertia * 2 * Math.PI * speed) / time,
};

export const spindleStopFormulas = [stopEnergy, stopPowerMean, stopPowerPeak, stopTorque] as const;
