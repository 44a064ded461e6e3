import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, chosen, type Quantity } from '../../core/quantity.ts';
import { productOf, sumOf } from '../../core/steps.ts';
import { inputCurrent } from '../../formulas/supply.ts';
import { drivenSlides, isComputer, keepsSpindleMotor, memory } from './devices.ts';

/** Where the house has 120 V, a new circuit brings 230 V for a drive that wants it; a kept motor and a doubler drive stay on 120 V. */
function mainsVoltage(look: Look): Quantity {
  if (look.chosen('spindle-motor', 'doubler-drive'))
    return chosen(120, 'V', 'spindle-motor', 'doubler-drive', 'a doubler drive is fed with 120 V');
  if (!look.chosen('mains-supply', 'volts-120'))
    return chosen(230, 'V', 'mains-supply', look.option('mains-supply') ?? '', 'there is a 230 V outlet');
  if (look.chosen('supply-circuit', 'new-circuit') && !keepsSpindleMotor(look))
    return chosen(230, 'V', 'supply-circuit', 'new-circuit', 'the new circuit is put in with 230 V');
  return chosen(120, 'V', 'mains-supply', 'volts-120', 'the outlet has 120 V');
}

/** A new circuit is judged by its own rating, not by that of the outlet it replaces. The voltage of the house tells the country. */
function circuitRating(look: Look): Quantity | undefined {
  if (!look.chosen('supply-circuit', 'new-circuit')) return look.fact('outlet-amps');
  const american =
    look.chosen('mains-supply', 'volts-120', 'both-voltages') ||
    look.chosen('spindle-motor', 'doubler-drive');
  return chosen(
    american ? 20 : 16,
    'A',
    'supply-circuit',
    'new-circuit',
    american
      ? 'a common size in North America; the electrician says which it is'
      : 'a common size at 230 V; the electrician says which it is',
  );
}

/** Efficiency and power factor of what turns the spindle. */
function spindleShare(look: Look): { efficiency: number; powerFactor: number } {
  if (look.chosen('spindle-motor', 'keep-single-phase')) return { efficiency: 0.6, powerFactor: 0.67 };
  if (look.chosen('spindle-motor', 'keep-speed-knob')) return { efficiency: 0.75, powerFactor: 0.65 };
  return { efficiency: 0.75 * 0.95, powerFactor: 0.65 };
}

function current(look: Look, power: Quantity | undefined, efficiency: number, powerFactor: number) {
  return derive(inputCurrent, {
    power,
    efficiency: assumed(efficiency, '1', memory),
    powerFactor: assumed(powerFactor, '1', memory),
    voltage: look.figure('mains-voltage'),
  });
}

/** The plate of a drive speaks only where a drive is fitted. */
function spindleInput(look: Look): Quantity | undefined {
  const { efficiency, powerFactor } = spindleShare(look);
  const plate = keepsSpindleMotor(look) ? undefined : look.measured('drive-input-current');
  return plate ?? current(look, look.fact('spindle-power'), efficiency, powerFactor);
}

/** Watts that the axis supplies give out while cutting. */
function axisLoad(look: Look): Quantity | undefined {
  const why = `what a motor of this size takes while cutting; ${memory}`;
  const size = look.option('motor-size') ?? '';
  const small = chosen(105, 'W', 'motor-size', size, why);
  const large = chosen(180, 'W', 'motor-size', size, why);
  if (size === 'face-57-and-86') return sumOf({ small, large });
  return productOf('W', {
    each: size === 'face-86-both' ? large : small,
    motors: assumed(drivenSlides(look), '1', 'one for each driven slide'),
  });
}

function controlInput(look: Look): Quantity | undefined {
  return current(look, assumed(isComputer(look) ? 60 : 16, 'W', memory), 0.88, 0.6);
}

export const supplyFigures: readonly Figure[] = [
  { id: 'mains-voltage', label: 'Mains voltage of the machine', of: mainsVoltage },
  { id: 'circuit-rating', label: 'Rating of the circuit that feeds the machine', of: circuitRating },
  { id: 'spindle-input-current', label: 'Mains current of the spindle', of: spindleInput },
  { id: 'axis-load', label: 'Power of the axis motors while cutting', of: axisLoad },
  {
    id: 'axis-input-current',
    label: 'Mains current of the axis motors',
    of: (look) => current(look, look.figure('axis-load'), 0.85, 0.6),
  },
  { id: 'control-input-current', label: 'Mains current of the control', of: controlInput },
  {
    id: 'machine-current',
    label: 'Mains current of the whole machine',
    of: (look) =>
      sumOf({
        spindle: look.figure('spindle-input-current'),
        axes: look.figure('axis-input-current'),
        control: look.figure('control-input-current'),
      }),
  },
];
