import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, chosen, type Quantity } from '../../core/quantity.ts';
import { productOf, sumOf } from '../../core/steps.ts';
import { residualDevices } from '../../formulas/leakage.ts';
import { capacitorBleedTime } from '../../formulas/supply.ts';
import {
  holdsCharge,
  isComputer,
  keepsSpindleMotor,
  memory,
  sheet,
  spindleDriveInCabinet,
} from './devices.ts';

/** Amps to earth from what turns the spindle: a drive leaks through its filter, a factory speed board hardly at all. */
function spindleLeakage(look: Look): Quantity {
  const motor = look.option('spindle-motor') ?? '';
  if (motor === 'keep-single-phase') return chosen(0.0002, 'A', 'spindle-motor', motor, memory);
  if (motor === 'keep-speed-knob') return chosen(0.0005, 'A', 'spindle-motor', motor, memory);
  return look.measured('drive-leakage') ?? chosen(0.0035, 'A', 'spindle-motor', motor, memory);
}

function earthLeakage(look: Look): Quantity | undefined {
  const servo = look.chosen('axis-motor', 'mains-servo');
  return sumOf({
    spindle: spindleLeakage(look),
    axes: assumed(servo ? 0.004 : 0.0015, 'A', memory),
    control: assumed(isComputer(look) ? 0.0005 : 0, 'A', memory),
  });
}

/** Rating of the device that will guard the machine; undefined where nobody has looked yet. */
function deviceRating(look: Look): Quantity | undefined {
  const [sensitive, usual] = residualDevices;
  if (look.chosen('supply-circuit', 'new-circuit'))
    return chosen(
      usual!.rating,
      'A',
      'supply-circuit',
      'new-circuit',
      'comes with the circuit, made for drives',
    );
  const device = look.option('ground-fault-device') ?? '';
  if (device === 'trips-at-5-ma') return at(sensitive!.rating, device);
  if (device === 'trips-at-30-ma') return at(usual!.rating, device);
  if (device === 'no-device' && !keepsSpindleMotor(look))
    return at(usual!.rating, device, 'there is none; the plan buys one of 30 mA');
  return undefined;
}

const at = (rating: number, device: string, why = 'what it trips at'): Quantity =>
  chosen(rating, 'A', 'ground-fault-device', device, why);

/**
 * What may leak all day without tripping it. The sensitive device must hold up to 4 mA by its standard; of the others
 * two fifths of the rating, because they may trip from half of it.
 */
function allowance(look: Look): Quantity | undefined {
  const rating = look.figure('residual-device-rating');
  const sensitive = residualDevices[0]!;
  const share = rating?.value === sensitive.rating ? sensitive.mayTripFrom / sensitive.rating : 0.4;
  return productOf('A', {
    rating,
    share: assumed(share, '1', share === 0.4 ? 'two fifths at most; common practice' : sensitive.source),
  });
}

/** Seconds to 60 V by the resistor in the drive alone. The waiting ends with a meter, never with this. */
function bleedTime(look: Look): Quantity | undefined {
  if (!holdsCharge(look)) return undefined;
  const inside = spindleDriveInCabinet(look) ? 'spindle-motor' : 'axis-motor';
  const part = (value: number, unit: 'F' | 'ohm' | 'V') =>
    chosen(value, unit, inside, look.option(inside) ?? '', sheet);
  return derive(capacitorBleedTime, {
    capacitance: part(0.001, 'F'),
    resistance: part(47_000, 'ohm'),
    from: part(340, 'V'),
    to: look.figure('safe-bus-voltage'),
  });
}

export const leakageFigures: readonly Figure[] = [
  { id: 'earth-leakage', label: 'Leakage to earth', of: earthLeakage },
  {
    id: 'residual-device-rating',
    label: 'Current at which the earth-leakage device trips (ground fault)',
    of: deviceRating,
  },
  { id: 'leakage-allowance', label: 'Leakage that the device lets pass all day', of: allowance },
  {
    id: 'safe-bus-voltage',
    label: 'Voltage below which a drive may be touched',
    of: (look) =>
      holdsCharge(look)
        ? assumed(60, 'V', 'the usual limit for direct voltage; local code decides')
        : undefined,
  },
  {
    id: 'bus-bleed-time',
    label: 'Time in which the largest drive runs down to 60 V by itself',
    of: bleedTime,
  },
];
