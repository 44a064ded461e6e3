import type { Formula } from '../core/formula.ts';
import { sum } from './constants.ts';

/** Torque, N·m, that moves the rotor over by one microstep when `microsteps` make a full step. Less than the friction, and the slide waits for the next. */
export const microstepTorque: Formula<{ holdingTorque: number; microsteps: number }> = {
  id: 'microstep-torque',
  label: 'Torque of one microstep',
  equation: 'torque = holdingTorque × sin(90° ÷ microsteps)',
  tex: 'T_\\mu = T_h \\sin\\frac{90^\\circ}{m}',
  inputs: { holdingTorque: 'N·m', microsteps: '1' },
  unit: 'N·m',
  source: {
    ref: 'Faulhaber MicroMo, Microstepping: myths and realities',
    at: 'incremental torque for each microstep',
  },
  valid: { microsteps: [1, 256] },
  compute: ({ holdingTorque, microsteps }) => holdingTorque * Math.sin(Math.PI / 2 / microsteps),
};

/** How far a loaded rotor lags behind its field, in full steps. NaN for more load than the motor holds: it slips. */
export const stepperLoadAngle: Formula<{ loadTorque: number; holdingTorque: number }> = {
  id: 'stepper-load-angle',
  label: 'Lag of a loaded stepper, in full steps',
  equation: 'lag = asin(loadTorque ÷ holdingTorque) ÷ 90°',
  tex: '\\delta = \\frac{\\arcsin(T/T_h)}{90^\\circ}',
  inputs: { loadTorque: 'N·m', holdingTorque: 'N·m' },
  unit: '1',
  source: microstepTorque.source,
  valid: {},
  compute: ({ loadTorque, holdingTorque }) => Math.asin(loadTorque / holdingTorque) / (Math.PI / 2),
};

/** Voltage, V, above which a winding of this inductance, H, gains little and heats much. The drive's own limit stands below it. */
export const stepperSupplyVoltage: Formula<{ inductance: number }> = {
  id: 'stepper-supply-voltage',
  label: 'Highest useful supply voltage',
  equation: 'voltage = 1000 × √inductance',
  tex: 'V = 1000\\sqrt{L}',
  inputs: { inductance: 'H' },
  unit: 'V',
  source: { ref: 'common practice, no source', at: '32 times the square root of the millihenries' },
  valid: {},
  unverified: 'A rule of the drive trade whose origin is not known to us.',
  compute: ({ inductance }) => 1000 * Math.sqrt(inductance),
};

/** Current, A, of one supply for several steppers: two thirds of the sum of their phase currents. */
export const stepperSupplyCurrent: Formula<{ phaseCurrents: readonly number[] }> = {
  id: 'stepper-supply-current',
  label: 'Current of the supply for the steppers',
  equation: 'current = 0.67 × Σ phaseCurrents',
  tex: 'I = 0.67\\sum I_p',
  inputs: { phaseCurrents: 'A' },
  unit: 'A',
  source: { ref: 'common practice, no source', at: 'drives that chop the current' },
  valid: {},
  unverified: 'A rule of the drive trade; no published worked figure is known to us.',
  compute: ({ phaseCurrents }) => 0.67 * sum(phaseCurrents),
};

export const stepperFormulas = [
  microstepTorque,
  stepperLoadAngle,
  stepperSupplyVoltage,
  stepperSupplyCurrent,
] as const;
