import { motorSpeed } from '../formulas/motion.ts';
import { stepperCornerSpeed, stepperTorqueAtSpeed, usableTorqueFraction } from '../formulas/motor.ts';
import { stepperSupplyVoltage } from '../formulas/stepper.ts';
import {
  ampere,
  curveOf,
  mm,
  newtonMetre,
  perMinute,
  rpm,
  type Values,
  volt,
  type WorkingFigure,
} from './figure.ts';

/** Fast moves that are looked at, mm/min. */
const RAPID = { low: 100, high: 6000 };
/** Ohms of a winding: those of most steppers lie between 0.4 and 1; beside the inductance it counts little. */
const RESISTANCE = 0.7;

function answer({
  supply = 1,
  inductance = 1,
  current = 1,
  holding = 0,
  lead = 1,
  ratio = 1,
  rapid = 0,
}: Values) {
  const winding = {
    supply,
    inductance,
    resistance: RESISTANCE,
    ratedCurrent: current,
    holdingTorque: holding,
  };
  const turning = (speed: number) => motorSpeed.compute({ speed, lead, ratio });
  const torqueAt = (speed: number) => stepperTorqueAtSpeed.compute({ ...winding, speed: turning(speed) });
  const plannedAt = (speed: number) => holding * usableTorqueFraction.compute({ speed: turning(speed) });
  const corner = stepperCornerSpeed.compute(winding) / turning(1);
  const useful = stepperSupplyVoltage.compute({ inductance });
  const along = (of: (speed: number) => number) => curveOf(0, RAPID.high / perMinute.per, of);
  return {
    say:
      (rapid <= corner
        ? 'At {rapid} the motor still has all of its {torque}: on {supply} it keeps them up to {corner}.'
        : 'On {supply} the motor keeps its {full} up to {corner}; at {rapid} it has {torque} left.') +
      (supply > useful ? ' More than {useful} makes heat in this winding and little else.' : ''),
    rows: [
      { id: 'full', label: 'Torque when slow', value: torqueAt(0), written: newtonMetre },
      { id: 'corner', label: 'It is kept up to', value: corner, written: perMinute },
      { id: 'torque', label: 'Torque at the fast move', value: torqueAt(rapid), written: newtonMetre },
      {
        id: 'planned',
        label: 'What our checks count on there',
        value: plannedAt(rapid),
        written: newtonMetre,
      },
      { id: 'turns', label: 'The motor then turns at', value: turning(rapid), written: rpm },
      { id: 'useful', label: 'Most volts that the winding uses', value: useful, written: volt },
    ],
    curves: [
      { name: 'where it slips, on this supply', points: along(torqueAt) },
      { name: 'what our checks count on', points: along(plannedAt), broken: true },
    ],
    mark: [rapid, torqueAt(rapid)],
  } as const;
}

/** Torque that a stepper has left at a speed of the slide, by the voltage of its supply. */
export const supply: WorkingFigure = {
  id: 'supply',
  topic: 'motor-supply',
  question: 'How fast may the slide go on this supply?',
  begin:
    'Set the motor from its sheet, then try other volts; a winding is taken to have 0.7 ohm. Stay under what the drive stands, whatever the picture says.',
  inputs: [
    {
      id: 'supply',
      label: 'Voltage of the supply',
      unit: 'V',
      written: volt,
      low: 12,
      high: 100,
      step: 1,
      example: 40,
      own: 'carriage-supply-volts',
    },
    {
      id: 'inductance',
      label: 'Inductance of a winding',
      unit: 'H',
      written: { unit: 'mH', per: 1000 },
      low: 0.5,
      high: 20,
      step: 0.1,
      example: 2.5,
      own: 'carriage-motor-inductance',
    },
    {
      id: 'current',
      label: 'Current of a winding',
      unit: 'A',
      written: ampere,
      low: 0.5,
      high: 8,
      step: 0.1,
      example: 4.2,
      own: 'carriage-motor-current',
    },
    {
      id: 'holding',
      label: 'Holding torque',
      unit: 'N·m',
      written: newtonMetre,
      low: 0.2,
      high: 15,
      step: 0.1,
      example: 2.2,
      own: 'carriage-motor-torque',
    },
    {
      id: 'lead',
      label: 'Lead of the screw',
      unit: 'm',
      written: mm,
      low: 1,
      high: 20,
      step: 0.5,
      example: 5,
      own: 'carriage-lead',
    },
    {
      id: 'ratio',
      label: 'Motor turns for one of the screw',
      unit: '1',
      written: { unit: '', per: 1 },
      low: 0.5,
      high: 5,
      step: 0.1,
      example: 2,
      own: 'carriage-ratio',
    },
    {
      id: 'rapid',
      label: 'Fast move of the slide',
      unit: 'm/s',
      written: perMinute,
      ...RAPID,
      step: 50,
      example: 2400,
      own: 'carriage-rapid',
    },
  ],
  across: { label: 'speed of the slide, mm/min', written: perMinute },
  up: { label: 'torque of the motor, N·m', written: newtonMetre },
  ownWith: 'carriage-motor-inductance',
  formulas: [
    stepperTorqueAtSpeed.id,
    stepperCornerSpeed.id,
    usableTorqueFraction.id,
    stepperSupplyVoltage.id,
    motorSpeed.id,
  ],
  answer,
};
