import type { Figure, Look } from '../../core/figure.ts';
import { assumed, type Quantity } from '../../core/quantity.ts';
import { productOf, sumOf } from '../../core/steps.ts';
import { drivenMotors, drivenSlides, spindleDriveInCabinet } from './devices.ts';

const count = (value: number, why: string): Quantity =>
  assumed(value, '1', `${why}; common practice, no source: your drawing decides`);

/** Both ends of a wire. */
const ENDS = 2;
const CORES = 4;

const closedLoop = (look: Look): boolean =>
  look.chosen('axis-motor', 'closed-loop-stepper', 'mains-servo', 'used-dc-servo');
const hasSensor = (look: Look): boolean =>
  look.option('spindle-sensor') !== undefined && !look.chosen('spindle-sensor', 'no-sensor');

function switches(look: Look): number {
  if (look.option('home-limits') === undefined || look.chosen('home-limits', 'no-homing')) return 0;
  return drivenSlides(look) * (look.chosen('home-limits', 'home-and-limit-switches') ? 2 : 1);
}

/** Cables that come into the box from outside. */
const cables = (look: Look): Quantity | undefined =>
  sumOf({
    mains: count(1, 'the mains'),
    motors: count(drivenMotors(look), 'one for each axis motor'),
    encoders: count(closedLoop(look) ? drivenMotors(look) : 0, 'one for each motor encoder'),
    spindle: count(spindleDriveInCabinet(look) ? 1 : 0, 'the spindle motor'),
    sensor: count(hasSensor(look) ? 1 : 0, 'the spindle sensor'),
    switches: count(switches(look), 'one for each home or limit switch'),
    stop: count(look.chosen('chuck-guard', 'shield-with-switch') ? 2 : 1, 'stop button and guard switch'),
  });

/** Wire ends: the cores of the cables at both ends, and the wires inside the box. */
function ends(look: Look): Quantity | undefined {
  const cores = productOf('1', {
    cables: look.figure('cables-entering'),
    cores: count(CORES, 'four cores a cable'),
    ends: count(ENDS, 'two ends a core'),
  });
  const small = look.chosen('control', 'thread-synchroniser');
  const inside = productOf('1', {
    wires: count(small ? 12 : 40, 'wires inside the box'),
    ends: count(ENDS, 'two ends a wire'),
  });
  return sumOf({ cores, inside });
}

export const endFigures: readonly Figure[] = [
  { id: 'cables-entering', label: 'Cables that enter the cabinet', of: cables },
  { id: 'wire-ends', label: 'Wire ends', of: ends },
];
