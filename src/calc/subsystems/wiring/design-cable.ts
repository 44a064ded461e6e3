import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, chosen, type Quantity, type Unit } from '../../core/quantity.ts';
import { largestOf, productOf, quotientOf, sumOf } from '../../core/steps.ts';
import { ampacityAt40, conductorAmpacity } from '../../formulas/ampacity.ts';
import { type Circuit, voltageDrop } from '../../formulas/wire.ts';
import { memory, sheet } from './devices.ts';

const practice = 'common practice, no source';
/** Copper in a closed chain or trunking in a warm shop. */
const warm = assumed(25, '°C', 'copper a little warmer than the workshop');

const loose = (look: Look): boolean => look.chosen('cable', 'unscreened-wire');
const byCable = (look: Look, value: number, unit: Unit, why: string): Quantity =>
  chosen(value, unit, 'cable', look.option('cable') ?? '', why);

/** Metres from the cabinet to the far end of the slides: the string along the bed, else the bed and two metres. */
const longestRun = (look: Look): Quantity | undefined =>
  look.measured('longest-cable-run') ??
  sumOf({
    bed: look.fact('bed-length'),
    toCabinet: assumed(2, 'm', 'from the end of the bed to the cabinet; common practice'),
  });

/** Amps in a lead of the largest axis motor. */
function axisCurrent(look: Look): Quantity | undefined {
  const carriage = look.figure('carriage-motor-current');
  const cross = look.figure('cross-motor-current');
  return largestOf({ ...(carriage && { carriage }), ...(cross && { cross }) });
}

/** Amps between a three-phase drive and its motor. */
function spindleCableCurrent(look: Look): Quantity | undefined {
  if (!look.chosen('spindle-motor', 'three-phase-drive', 'doubler-drive')) return undefined;
  return (
    look.measured('spindle-plate-current') ??
    quotientOf(
      'A',
      look.fact('spindle-power'),
      assumed(750 / 3.5, 'V', `about 3.5 A for 0.75 kW at 230 V, three phases; ${memory}`),
    )
  );
}

/** Current that a cable has to carry: a quarter more than the motor takes. */
const withReserve = (current: Quantity | undefined): Quantity | undefined =>
  productOf('A', { current, reserve: assumed(1.25, '1', 'a quarter more than the plate; NEC 430.22') });

/** The thinnest listed conductor that carries the current, and never thinner than `least`. */
function sizeFor(current: Quantity | undefined, least: number): Quantity | undefined {
  if (!current) return undefined;
  const size = ampacityAt40.find(
    ({ area, amperes }) => area >= least * (1 - 1e-9) && amperes.conduit >= current.value,
  );
  return (
    size && assumed(size.area, 'm²', `the thinnest that carries it, at least ${least * 1e6} mm²; ${practice}`)
  );
}

function motorCable(look: Look, current: Quantity | undefined): Quantity | undefined {
  if (loose(look)) return current && byCable(look, 0.75e-6, 'm²', 'the usual loose wire of models');
  return sizeFor(withReserve(current), 1.5e-6);
}

const carries = (area: Quantity | undefined): Quantity | undefined =>
  derive(conductorAmpacity, { area, lay: 'conduit' });

function drop(look: Look, current: Quantity | undefined, area: Quantity | undefined, circuit: Circuit) {
  const length = look.figure('cable-run');
  return derive(voltageDrop, { current, length, area, temperature: warm, circuit });
}

const sensorArea = (look: Look): Quantity =>
  byCable(look, loose(look) ? 0.14e-6 : 0.25e-6, 'm²', 'the usual conductor of such cable');

function encoderDrop(look: Look): Quantity | undefined {
  const sensor = look.option('spindle-sensor') ?? '';
  if (!sensor.includes('encoder')) return undefined;
  return drop(look, chosen(0.15, 'A', 'spindle-sensor', sensor, sheet), sensorArea(look), 'dc');
}

export const cableFigures: readonly Figure[] = [
  { id: 'cable-run', label: 'Longest cable from the cabinet to a motor or switch', of: longestRun },
  { id: 'axis-cable-current', label: 'Current in the leads of the largest axis motor', of: axisCurrent },
  {
    id: 'axis-cable-area',
    label: 'Conductor of the axis motor cables',
    of: (look) => motorCable(look, look.figure('axis-cable-current')),
  },
  {
    id: 'axis-cable-ampacity',
    label: 'Current that the axis motor cables may carry',
    of: (look) => carries(look.figure('axis-cable-area')),
  },
  {
    id: 'axis-cable-drop',
    label: 'Volts lost on the way to an axis motor; a chopper drive makes them up',
    of: (look) => drop(look, look.figure('axis-cable-current'), look.figure('axis-cable-area'), 'dc'),
  },
  { id: 'spindle-cable-current', label: 'Current in the spindle motor cable', of: spindleCableCurrent },
  {
    id: 'spindle-cable-area',
    label: 'Conductor of the spindle motor cable',
    of: (look) => motorCable(look, look.figure('spindle-cable-current')),
  },
  {
    id: 'spindle-cable-ampacity',
    label: 'Current that the spindle motor cable may carry',
    of: (look) => carries(look.figure('spindle-cable-area')),
  },
  {
    id: 'mains-cord-area',
    label: 'Conductor of the mains cord',
    of: (look) => sizeFor(look.figure('circuit-rating'), 1.5e-6),
  },
  {
    id: 'mains-cord-ampacity',
    label: 'Current that the mains cord may carry',
    of: (look) => carries(look.figure('mains-cord-area')),
  },
  {
    id: 'sensor-drop',
    label: 'Volts lost on the way to a 24 V switch or sensor',
    of: (look) => drop(look, assumed(0.1, 'A', memory), sensorArea(look), 'dc'),
  },
  { id: 'encoder-drop', label: 'Volts lost on the way to the 5 V spindle encoder', of: encoderDrop },
  {
    id: 'motor-wire-reserve',
    label: 'Current that the spindle motor cable is chosen for',
    of: (look) => withReserve(look.figure('spindle-cable-current')),
  },
  {
    id: 'axis-wire-reserve',
    label: 'Current that the axis motor cables are chosen for',
    of: (look) => withReserve(look.figure('axis-cable-current')),
  },
];
