import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, type Quantity } from '../../core/quantity.ts';
import { sumOf } from '../../core/steps.ts';
import { inputCurrent } from '../../formulas/supply.ts';

const memory = 'from memory of the trade; the plate of the device decides';

/** Mains voltage of the machine: a new circuit brings the higher one. */
function mainsVoltage(look: Look): Quantity {
  const low = look.chosen('mains-supply', 'volts-120') && !look.chosen('supply-circuit', 'new-circuit');
  return assumed(
    low ? 120 : 230,
    'V',
    low ? 'the outlet has 120 V' : 'the outlet or a new circuit has 230 V',
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

function spindleInput(look: Look): Quantity | undefined {
  const { efficiency, powerFactor } = spindleShare(look);
  return (
    look.measured('drive-input-current') ?? current(look, look.fact('spindle-power'), efficiency, powerFactor)
  );
}

/** Watts that the axis supplies take out while cutting; from memory of the trade. */
function axisLoad(look: Look): Quantity {
  const each = look.chosen('motor-size', 'face-86-both') ? 180 : 105;
  const one = look.chosen('driven-axes', 'carriage-only', 'cross-slide-only');
  return assumed(one ? each : 2 * each, 'W', `about ${each} W for each motor while cutting; ${memory}`);
}

const isComputer = (look: Look): boolean =>
  look.chosen(
    'control',
    'parallel-port-pc',
    'two-parallel-ports-pc',
    'motion-card-pc',
    'desktop-with-controller',
  );

function controlInput(look: Look): Quantity | undefined {
  return current(look, assumed(isComputer(look) ? 65 : 18, 'W', memory), 0.88, 0.74);
}

function earthLeakage(look: Look): Quantity | undefined {
  const kept = look.chosen('spindle-motor', 'keep-single-phase');
  const servo = look.chosen('axis-motor', 'mains-servo');
  return sumOf({
    spindle: look.measured('drive-leakage') ?? assumed(kept ? 0.0002 : 0.0035, 'A', memory),
    axes: assumed(servo ? 0.004 : 0.0015, 'A', memory),
    control: assumed(isComputer(look) ? 0.0005 : 0, 'A', memory),
  });
}

export const figures: readonly Figure[] = [
  { id: 'mains-voltage', label: 'Mains voltage of the machine', of: mainsVoltage },
  { id: 'spindle-input-current', label: 'Mains current of the spindle', of: spindleInput },
  {
    id: 'axis-input-current',
    label: 'Mains current of the axis motors',
    of: (look) => current(look, axisLoad(look), 0.85, 0.6),
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
  { id: 'earth-leakage', label: 'Leakage to earth', of: earthLeakage },
];
