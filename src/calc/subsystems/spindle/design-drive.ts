import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { assumed, chosen, type Quantity } from '../../core/quantity.ts';
import { largestOf, productOf, quotientOf, smallestOf } from '../../core/steps.ts';
import { synchronousSpeed, torqueFromPower } from '../../formulas/spindle.ts';
import { driveFrequencyCap } from '../../formulas/spindle-drive.ts';

const memory = 'from memory of the trade: the plate of the motor decides';

/** Motors whose speed follows the frequency that they are fed with. */
export const phaseMotor = (look: Look): boolean =>
  look.chosen('spindle-motor', 'three-phase-drive', 'doubler-drive');

/** Motors whose speed electronics set. */
export const variable = (look: Look): boolean => !look.chosen('spindle-motor', 'keep-single-phase');

const induction = (look: Look): boolean => phaseMotor(look) || !variable(look);

/** Rated speeds of motors that are no induction motors, rev/s. */
const ratedSpeed: Readonly<Record<string, number>> = {
  'brushless-kit': 3000 / 60,
  'servo-spindle': 3000 / 60,
  'keep-speed-knob': 4000 / 60,
};

/** Poles that fit the speed on the plate: the field turns a little faster than the motor. */
function poles(look: Look): Quantity {
  const speed = look.measured('spindle-motor-speed')?.value;
  if (speed === undefined) return assumed(4, '1', `most motors of this size have four poles; ${memory}`);
  const pairs = Math.max(1, Math.floor((look.fact('mains-frequency')?.value ?? 50) / speed));
  return assumed(2 * pairs, '1', 'the number of poles that the speed on the plate belongs to');
}

const synchronous = (look: Look): Quantity | undefined =>
  induction(look)
    ? derive(synchronousSpeed, { frequency: look.fact('mains-frequency'), poles: poles(look) })
    : undefined;

function motorSpeed(look: Look): Quantity | undefined {
  const plate = look.measured('spindle-motor-speed');
  if (plate) return plate;
  const motor = look.option('spindle-motor') ?? '';
  const rated = ratedSpeed[motor];
  if (rated !== undefined) return chosen(rated, 'rev/s', 'spindle-motor', motor, memory);
  return productOf('rev/s', {
    field: look.figure('spindle-field-speed'),
    share: assumed(0.955, '1', `a loaded motor lags 4 to 5 % behind its field; ${memory}`),
  });
}

const fastRatio = (look: Look): Quantity | undefined =>
  look.measured('belt-ratio-fast') ??
  quotientOf('1', look.figure('spindle-motor-speed'), look.fact('spindle-speed-max'));

/**
 * Two positions are kept. Between them a drive bridges about four to one; a motor of one speed keeps its slowest
 * position, whatever it is.
 */
function slowRatio(look: Look): Quantity | undefined {
  const fast = look.figure('belt-ratio-fast');
  const measured = look.measured('belt-ratio-slow');
  if (measured || !fast) return measured;
  if ((look.fact('belt-steps')?.value ?? 1) < 1.5) return fast;
  const slowest = quotientOf('1', look.figure('spindle-motor-speed'), look.fact('spindle-speed-min'));
  if (!slowest || !variable(look)) return largestOf({ fast, ...(slowest ? { slowest } : {}) });
  const apart = assumed(4, '1', 'two belt positions stay; a drive bridges about four to one between them');
  const bridged = productOf('1', { fast, apart })!;
  return largestOf({ fast, slower: smallestOf({ slowest, bridged }) });
}

/** The lowest of all that limits the speed of chuck and work. */
function speedLimit(look: Look): Quantity | undefined {
  const marked = look.measured('chuck-marked-speed');
  const work = look.measured('work-safe-speed');
  return smallestOf({
    original: look.fact('spindle-speed-max'),
    ...(marked ? { marked } : {}),
    ...(work ? { work } : {}),
  });
}

const atLimit = (look: Look, ratio: string, speed: string): Quantity | undefined =>
  phaseMotor(look)
    ? derive(driveFrequencyCap, {
        spindleSpeed: look.figure('chuck-speed-limit'),
        ratio: look.figure(ratio),
        motorSpeed: look.figure(speed),
        baseFrequency: look.fact('mains-frequency'),
      })
    : undefined;

const overspeed = (look: Look): Quantity | undefined =>
  phaseMotor(look)
    ? productOf('rev/s', {
        limit: look.figure('chuck-speed-limit'),
        apart: quotientOf('1', look.figure('belt-ratio-slow'), look.figure('belt-ratio-fast')),
      })
    : undefined;

/** Motor, belt positions and the limit of speed. */
export const driveFigures: readonly Figure[] = [
  {
    id: 'spindle-field-speed',
    label: 'Speed of the spindle motor without load (synchronous speed)',
    of: synchronous,
  },
  { id: 'spindle-motor-speed', label: 'Speed of the spindle motor at rated power', of: motorSpeed },
  {
    id: 'spindle-motor-torque',
    label: 'Torque of the spindle motor',
    of: (look) =>
      derive(torqueFromPower, {
        power: look.fact('spindle-power'),
        speed: look.figure('spindle-motor-speed'),
      }),
  },
  {
    id: 'belt-ratio-fast',
    label: 'Turns of the motor for one of the spindle, fast belt position',
    of: fastRatio,
  },
  {
    id: 'belt-ratio-slow',
    label: 'Turns of the motor for one of the spindle, slow belt position',
    of: slowRatio,
  },
  { id: 'chuck-speed-limit', label: 'Highest speed allowed for chuck and work', of: speedLimit },
  {
    id: 'drive-frequency-cap',
    label: 'Frequency limit to set in the drive, for the fast belt position',
    of: (look) => atLimit(look, 'belt-ratio-fast', 'spindle-field-speed'),
  },
  {
    id: 'drive-frequency-fast',
    label: 'Drive frequency at the highest speed under load, fast belt position',
    of: (look) => atLimit(look, 'belt-ratio-fast', 'spindle-motor-speed'),
  },
  {
    id: 'drive-frequency-slow',
    label: 'Drive frequency at the highest speed under load, slow belt position',
    of: (look) => atLimit(look, 'belt-ratio-slow', 'spindle-motor-speed'),
  },
  {
    id: 'overspeed-by-slow-limit',
    label: 'Speed in the fast belt position if the limit were set for the slow one',
    of: overspeed,
  },
];
