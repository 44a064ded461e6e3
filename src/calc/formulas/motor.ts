import type { Formula } from '../core/formula.ts';

const textbook = {
  ref: 'Acarnley, Stepping Motors: a guide to theory and practice',
  at: 'chapter 5, first-order model of the pull-out torque, two phases on',
} as const;

/** Teeth on the rotor of a motor with 200 full steps: one turn is so many electrical turns. */
const rotorTeeth = 50;

/** What a stepper under load keeps of its holding torque at low speed. Common practice. */
const runningShare = 0.7;

type Winding = {
  holdingTorque: number;
  ratedCurrent: number;
  inductance: number;
  resistance: number;
  supply: number;
};

const windingInputs = {
  holdingTorque: 'N·m',
  ratedCurrent: 'A',
  inductance: 'H',
  resistance: 'ohm',
  supply: 'V',
} as const;

/**
 * Speed, rev/s, up to which the supply still drives the rated current through the winding. NaN where it cannot even
 * at rest. A motor of 200 full steps, one phase on one drive.
 */
export const stepperCornerSpeed: Formula<Winding> = {
  id: 'stepper-corner-speed',
  label: 'Speed up to which a stepper keeps its torque',
  equation:
    'ω so that supply² = (resistance × I + K × ω)² + (50 × ω × inductance × I)², K = holdingTorque ÷ (√2 × ratedCurrent), speed = ω ÷ 2π',
  tex: 'V^2 = (R I + K\\omega)^2 + (50\\,\\omega L I)^2,\\quad K = \\frac{T_h}{\\sqrt2\\,I}',
  inputs: windingInputs,
  unit: 'rev/s',
  source: textbook,
  valid: {},
  unverified: 'A textbook model; no published motor with all its figures is known to us.',
  compute: ({ holdingTorque, ratedCurrent, inductance, resistance, supply }) => {
    const perSpeed = holdingTorque / (Math.SQRT2 * ratedCurrent);
    const drop = resistance * ratedCurrent;
    // Quadratic in ω; what the supply has left over the resistance must be more than nothing.
    const square = perSpeed ** 2 + (rotorTeeth * inductance * ratedCurrent) ** 2;
    const half = drop * perSpeed;
    const left = supply ** 2 - drop ** 2;
    return left > 0 ? (Math.sqrt(half ** 2 + square * left) - half) / square / (2 * Math.PI) : Number.NaN;
  },
};

/** Torque at which a stepper falls out of step, N·m: level to the corner speed, then falling as one over the speed. */
export const stepperTorqueAtSpeed: Formula<Winding & { speed: number }> = {
  id: 'stepper-torque-at-speed',
  label: 'Torque of a stepper at speed',
  equation: 'torque = 0.7 × holdingTorque × min(1, corner speed ÷ speed)',
  tex: 'T = 0.7\\,T_h\\,\\min\\!\\left(1, \\frac{n_c}{n}\\right)',
  inputs: { ...windingInputs, speed: 'rev/s' },
  unit: 'N·m',
  source: textbook,
  valid: {},
  unverified: 'A first-order model with no published worked figure; the maker’s own curve stands before it.',
  compute: ({ speed, ...winding }) => {
    const corner = stepperCornerSpeed.compute(winding);
    return runningShare * winding.holdingTorque * (speed <= corner ? 1 : corner / speed);
  },
};

/** Share of the holding torque that may be planned with when no curve of the motor is known. Margins come on top. */
export const usableTorqueFraction: Formula<{ speed: number }> = {
  id: 'usable-torque-fraction',
  label: 'Share of the holding torque to plan with, no curve known',
  equation:
    'fraction = 0.50 to 5 rev/s (300 a minute), 0.35 at 10, 0.20 at 16.7 (1,000 a minute), straight between, then 0.20 × 16.7 ÷ speed',
  tex: 'k = 0.50,\\;0.35,\\;0.20 \\quad (n \\le 5,\\;10,\\;16.7\\ \\mathrm{s^{-1}})',
  inputs: { speed: 'rev/s' },
  unit: '1',
  source: { ref: 'common practice, no source', at: 'usable figures, not the torque of falling out of step' },
  valid: { speed: [0, 1000 / 60] },
  unverified: 'A rule of the trade for motors without a curve; nothing is published to hold it against.',
  compute: ({ speed }) => {
    const perMinute = speed * 60;
    if (perMinute <= 300) return 0.5;
    if (perMinute <= 600) return 0.5 - (0.15 * (perMinute - 300)) / 300;
    if (perMinute <= 1000) return 0.35 - (0.15 * (perMinute - 600)) / 400;
    return 200 / perMinute;
  },
};

export const motorFormulas = [stepperCornerSpeed, stepperTorqueAtSpeed, usableTorqueFraction] as const;
