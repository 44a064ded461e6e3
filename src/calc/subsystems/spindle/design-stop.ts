import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, type Quantity } from '../../core/quantity.ts';
import { productOf, quotientOf } from '../../core/steps.ts';
import { steel } from '../../formulas/constants.ts';
import { screwInertia } from '../../formulas/inertia.ts';
import { stopEnergy, stopPowerMean, stopPowerPeak, stopTorque } from '../../formulas/spindle-stop.ts';
import { phaseMotor } from './design-drive.ts';

/** Motors that a drive slows down on a ramp. */
export const ramps = (look: Look): boolean =>
  phaseMotor(look) || look.chosen('spindle-motor', 'brushless-kit', 'servo-spindle');

/** A nose from which a chuck can come loose: screwed, or not looked at yet. */
export const looseNose = (look: Look): boolean =>
  look.chosen('spindle-nose', 'screwed-nose', 'nose-not-known');

/** Whether the energy of a stop goes into a brake resistor. */
export const withResistor = (look: Look): boolean =>
  ramps(look) && look.chosen('reversing', 'forward-and-reverse');

/** Half the mass times the radius squared where the chuck was weighed, else a steel disc 0.4 of its diameter thick. */
function chuckInertia(look: Look): Quantity | undefined {
  const mass = look.measured('chuck-mass');
  const diameter = look.fact('chuck-diameter');
  if (mass) {
    const disc = assumed(1 / 8, '1', 'a solid disc: half of mass times radius squared');
    return productOf('kg·m²', { mass, diameter, again: diameter, disc });
  }
  return derive(screwInertia, {
    diameter,
    length: productOf('m', {
      diameter,
      share: assumed(0.4, '1', 'a chuck is about 0.4 of its diameter thick; from memory of the trade'),
    }),
    density: assumed(steel.density, 'kg/m³', 'steel'),
  });
}

/** A screwed nose with nothing that holds the chuck wants a slow ramp; where it reverses, a lock is in the parts. */
function stopTime(look: Look): Quantity {
  const slow = looseNose(look) && !look.chosen('reversing', 'forward-and-reverse');
  return slow
    ? assumed(5, 's', 'a screwed nose without a lock stops in 5 s or more; common practice')
    : assumed(3, 's', 'a chuck that cannot come loose stops within 3 s; common practice');
}

const turning = (look: Look) => ({
  inertia: look.figure('spindle-inertia'),
  speed: look.figure('chuck-speed-limit'),
});
const stop = (look: Look) => ({ energy: look.figure('stop-energy'), time: look.figure('stop-time') });

/** The largest resistor that still takes the peak: bus voltage squared over the peak power. */
function largestOhms(look: Look): Quantity | undefined {
  if (!withResistor(look)) return undefined;
  const bus = assumed(380, 'V', 'a 230 V drive switches its resistor on at about 380 V; its manual decides');
  return quotientOf('ohm', productOf('V', { bus, again: bus }), look.figure('stop-power-peak'));
}

/** What a stop from the highest speed takes out. */
export const stopFigures: readonly Figure[] = [
  {
    id: 'spindle-inertia',
    label: 'Inertia of everything that turns with the spindle',
    of: (look) =>
      productOf('kg·m²', {
        chuck: chuckInertia(look),
        rest: assumed(1.25, '1', 'spindle, pulleys, motor and work add about a quarter; judgement'),
      }),
  },
  {
    id: 'stop-time',
    label: 'Time to stop from the highest speed',
    of: (look) => (ramps(look) ? stopTime(look) : undefined),
  },
  {
    id: 'stop-energy',
    label: 'Energy to take out at a stop from the highest speed',
    of: (look) => derive(stopEnergy, turning(look)),
  },
  {
    id: 'stop-power-mean',
    label: 'Mean power of that stop',
    of: (look) => derive(stopPowerMean, stop(look)),
  },
  {
    id: 'stop-power-peak',
    label: 'Power at the start of that stop (peak)',
    of: (look) => derive(stopPowerPeak, stop(look)),
  },
  {
    id: 'nose-torque',
    label: 'Torque on the spindle nose while stopping',
    of: (look) => derive(stopTorque, { ...turning(look), time: look.figure('stop-time') }),
  },
  {
    id: 'brake-resistor-largest',
    label: 'Largest brake resistor that takes the start of the stop',
    of: largestOhms,
  },
];
