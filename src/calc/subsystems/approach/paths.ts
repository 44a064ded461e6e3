import { all, any, is, isNot, not } from '../../core/condition.ts';
import { trainingMachine } from '../purpose/paths.ts';

export { clampedBrackets, hasSpareLathe, oneSlide, synchroniser, trainingMachine } from '../purpose/paths.ts';

export const readyKit = is('buying', 'ready-kit');

/** A slide that gets its screw, motor and brackets in this job. */
export const carriageDriven = all(not(is('driven-axes', 'cross-slide-only')), not(trainingMachine));
export const crossDriven = all(not(is('driven-axes', 'carriage-only')), not(trainingMachine));
export const tailstockDriven = any(is('driven-axes', 'both-and-tailstock'), is('holes', 'motor-tailstock'));

/** The headstock is disturbed: another motor goes on. */
export const newSpindleMotor = is(
  'spindle-motor',
  'three-phase-drive',
  'doubler-drive',
  'brushless-kit',
  'servo-spindle',
);

/** Something round is made for the spindle on this lathe: a pulley, a sensor hub. */
export const spindleParts = any(newSpindleMotor, isNot('spindle-sensor', 'no-sensor'));

/** A new screw has to be lined up with the bed. */
export const newCarriageScrew = all(
  carriageDriven,
  isNot('carriage-drive', 'original-lead-screw', 'rack-pinion'),
);

/** Brackets are cut from plate by the owner. */
export const cutsBrackets = all(
  is('brackets', 'made-on-this-lathe', 'made-with-a-mill', 'printed-first'),
  not(readyKit),
);
