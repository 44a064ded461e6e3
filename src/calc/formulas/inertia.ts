import type { Formula } from '../core/formula.ts';
import { sum } from './constants.ts';

const yaskawa = 'Yaskawa Σ-V-MD user manual';

/** Inertia of a solid round bar about its axis, kg·m². */
const barInertia = (diameter: number, length: number, density: number): number =>
  (Math.PI * density * length * diameter ** 4) / 32;

/** Inertia of a screw taken as a plain bar of its outer diameter, kg·m². */
export const screwInertia: Formula<{ diameter: number; length: number; density: number }> = {
  id: 'screw-inertia',
  label: 'Inertia of the screw',
  equation: 'inertia = π ÷ 32 × density × length × diameter⁴',
  tex: 'J_s = \\frac{\\pi}{32}\\,\\rho\\,L\\,D^4',
  inputs: { diameter: 'm', length: 'm', density: 'kg/m³' },
  unit: 'kg·m²',
  source: { ref: yaskawa, at: 'section 2.2.2, ball screw' },
  valid: {},
  compute: ({ diameter, length, density }) => barInertia(diameter, length, density),
};

/** Inertia of a toothed pulley taken as a solid disc of its pitch diameter, kg·m². Aluminium 2700, steel 7850 kg/m³. */
export const pulleyInertia: Formula<{ teeth: number; pitch: number; width: number; density: number }> = {
  id: 'pulley-inertia',
  label: 'Inertia of a pulley',
  equation: 'inertia = π ÷ 32 × density × width × (teeth × pitch ÷ π)⁴',
  tex: 'J_p = \\frac{\\pi}{32}\\,\\rho\\,b\\left(\\frac{N p}{\\pi}\\right)^4',
  inputs: { teeth: '1', pitch: 'm', width: 'm', density: 'kg/m³' },
  unit: 'kg·m²',
  source: { ref: yaskawa, at: 'section 2.2.2, the same law as for the screw' },
  valid: {},
  unverified: 'A solid disc stands in for the pulley; no published pulley with all its sizes is known to us.',
  compute: ({ teeth, pitch, width, density }) => barInertia((teeth * pitch) / Math.PI, width, density),
};

/** Everything the motor turns, seen at the motor, kg·m². A reduction divides what lies behind it by its square. */
export const reflectedInertia: Formula<{
  mass: number;
  lead: number;
  ratio: number;
  screwInertia: number;
  drivenPulley: number;
  motorPulley: number;
}> = {
  id: 'reflected-inertia',
  label: 'Inertia that the motor feels',
  equation: 'inertia = motorPulley + (screwInertia + drivenPulley + mass × (lead ÷ 2π)²) ÷ ratio²',
  tex: 'J_L = J_1 + \\frac{J_s + J_2 + m\\left(\\frac{l}{2\\pi}\\right)^2}{i^2}',
  inputs: {
    mass: 'kg',
    lead: 'm',
    ratio: '1',
    screwInertia: 'kg·m²',
    drivenPulley: 'kg·m²',
    motorPulley: 'kg·m²',
  },
  unit: 'kg·m²',
  source: { ref: yaskawa, at: 'section 2.2.2, load moment of inertia' },
  valid: {},
  compute: ({ mass, lead, ratio, motorPulley, ...behind }) =>
    motorPulley +
    (behind.screwInertia + behind.drivenPulley + mass * (lead / (2 * Math.PI)) ** 2) / ratio ** 2,
};

/** Torque, N·m, that speeds the motor and its load up at the rate at which the slide gains speed. Friction comes on top. */
export const accelerationTorque: Formula<{
  rotorInertia: number;
  loadInertia: number;
  acceleration: number;
  lead: number;
  ratio: number;
}> = {
  id: 'acceleration-torque',
  label: 'Torque to speed up',
  equation: 'torque = (rotorInertia + loadInertia) × 2π × ratio × acceleration ÷ lead',
  tex: 'T_a = (J_M + J_L)\\,\\frac{2\\pi\\,i\\,a}{l}',
  inputs: { rotorInertia: 'kg·m²', loadInertia: 'kg·m²', acceleration: 'm/s²', lead: 'm', ratio: '1' },
  unit: 'N·m',
  source: { ref: 'Yaskawa Σ-S series product manual', at: 'p. 2-13, required acceleration torque' },
  valid: {},
  compute: ({ rotorInertia, loadInertia, acceleration, lead, ratio }) =>
    ((rotorInertia + loadInertia) * 2 * Math.PI * ratio * acceleration) / lead,
};

/** The steady torque, N·m, that warms a motor as a cycle does: lists of torques and of the times they last, rests included. */
export const rmsTorque: Formula<{ torques: readonly number[]; times: readonly number[] }> = {
  id: 'rms-torque',
  label: 'Torque that warms the motor as the cycle does',
  equation: 'torque = √(Σ torques² × times ÷ Σ times)',
  tex: 'T_{rms} = \\sqrt{\\frac{\\sum T_i^2 t_i}{\\sum t_i}}',
  inputs: { torques: 'N·m', times: 's' },
  unit: 'N·m',
  source: { ref: 'FANUC AC servo motor α series descriptions, B-65142E/04', at: 'p. 38, torque in a cycle' },
  valid: {},
  compute: ({ torques, times }) =>
    Math.sqrt(sum(torques.map((torque, at) => torque ** 2 * times[at]!)) / sum(times)),
};

export const inertiaFormulas = [
  screwInertia,
  pulleyInertia,
  reflectedInertia,
  accelerationTorque,
  rmsTorque,
] as const;
