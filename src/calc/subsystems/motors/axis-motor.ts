import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { chosen, type Quantity, type Unit } from '../../core/quantity.ts';
import { largestOf, productOf, smallestOf } from '../../core/steps.ts';
import { motorSpeed } from '../../formulas/motion.ts';
import { usableTorqueFraction } from '../../formulas/motor.ts';
import { figuresFor, memory, type Slide, usual } from './axis.ts';
import { type MotorKind, motorKind } from './motors-table.ts';

/** A row of the motor table as a figure that follows from the choice of the motor. */
function sold(
  look: Look,
  slide: Slide,
  unit: Unit,
  pick: (kind: MotorKind) => number | undefined,
): Quantity | undefined {
  const kind = motorKind(look, slide);
  const value = kind && pick(kind);
  if (value === undefined) return undefined;
  return chosen(value, unit, 'axis-motor', look.option('axis-motor') ?? '', memory);
}

/** Motor torque for a moment, or the limit that the owner has set in the drive where that is lower. */
function peakTorque(look: Look, slide: Slide): Quantity | undefined {
  const torque = look.figure(`${slide}-motor-torque`);
  const times = sold(look, slide, '1', ({ peak }) => peak);
  const peak = productOf('N·m', { torque, times });
  const limit = look.measured(`${slide}-torque-limit`);
  return peak && limit ? smallestOf({ limit, peak }) : peak;
}

/** Torque to plan with at a speed: a servo keeps its own, of a stepper a share is left. */
function torqueAt(look: Look, slide: Slide, speed: Quantity | undefined): Quantity | undefined {
  const torque = look.figure(`${slide}-motor-torque`);
  if (motorKind(look, slide)?.kind === 'servo') return torque;
  return productOf('N·m', { torque, share: derive(usableTorqueFraction, { speed }) });
}

/** The fastest that the slide moves while it cuts, m/s: the feed at top speed, or the coarsest thread. */
function workingSpeed(look: Look, slide: Slide): Quantity | undefined {
  const cutting = productOf('m/s', { feed: look.fact('cut-feed'), speed: look.fact('spindle-speed-max') });
  if (slide === 'cross') return cutting;
  const thread = { pitch: look.fact('coarsest-thread'), speed: look.fact('thread-spindle-speed') };
  return largestOf({ cutting, thread: productOf('m/s', thread) });
}

/** What is known of a motor before it turns. */
function restFigures(slide: Slide): readonly Figure[] {
  const { figure } = figuresFor(slide);
  const own = (name: string, unit: Unit, pick: (kind: MotorKind) => number | undefined) => (look: Look) =>
    look.measured(`${slide}-${name}`) ?? sold(look, slide, unit, pick);
  return [
    figure(
      'motor-torque',
      'Torque of the motor',
      own('motor-torque', 'N·m', ({ torque }) => torque),
    ),
    figure('peak-torque', 'Most torque of the motor', (look) => peakTorque(look, slide)),
    figure(
      'motor-current',
      'Current of a winding',
      own('motor-current', 'A', ({ current }) => current),
    ),
    figure(
      'motor-inductance',
      'Inductance of a winding',
      own('motor-inductance', 'H', ({ inductance }) => inductance),
    ),
    figure('rotor-inertia', 'Inertia of the motor itself', (look) =>
      sold(look, slide, 'kg·m²', ({ rotor }) => rotor),
    ),
    figure('motor-speed-limit', 'Fastest sensible motor speed', (look) =>
      sold(look, slide, 'rev/s', ({ fastest }) => fastest),
    ),
  ];
}

/** Motor of a slide: what it gives at rest, while cutting and in a fast move. */
export function motorFigures(slide: Slide): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  const turning = (look: Look, speed: Quantity | undefined) =>
    derive(motorSpeed, { speed, lead: of(look)('lead'), ratio: of(look)('ratio') });
  return [
    ...restFigures(slide),
    figure('working-speed', 'Fastest move while cutting', (look) => workingSpeed(look, slide)),
    figure('motor-speed-working', 'Motor speed while cutting', (look) =>
      turning(look, of(look)('working-speed')),
    ),
    figure('motor-speed-rapid', 'Motor speed at rapid', (look) => turning(look, look.fact(`${slide}-rapid`))),
    figure('torque-working', 'Usable torque while cutting', (look) =>
      torqueAt(look, slide, of(look)('motor-speed-working')),
    ),
    figure('torque-rapid', 'Usable torque at rapid', (look) => {
      const own = look.measured(`${slide}-torque-at-rapid`);
      return own ?? torqueAt(look, slide, of(look)('motor-speed-rapid'));
    }),
  ];
}

/** Microsteps are left out on purpose: they change what is asked for, not where a loaded motor stands. */
export const fullSteps = usual(200, '1', 'full steps in a turn of nearly every stepper of this size');
