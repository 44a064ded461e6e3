import { all, any, is, isNot, not } from '../../core/condition.ts';
import { leadScrewAlone, trainingMachine } from '../purpose/paths.ts';

export {
  clampedBrackets,
  hasSpareLathe,
  leadScrewAlone,
  leadScrewSynchroniser,
  oneSlide,
  synchroniser,
  trainingMachine,
  widerSynchroniser,
} from '../purpose/paths.ts';

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

/** The carriage is moved by the lead screw that is there: of brackets only one motor plate is wanted. */
export const onlyMotorPlate = all(carriageDriven, is('carriage-drive', 'original-lead-screw'));

/** Brackets are cut from plate by the owner. */
export const cutsBrackets = all(
  is('brackets', 'made-on-this-lathe', 'made-with-a-mill', 'printed-first'),
  not(readyKit),
);

/**
 * Nothing that is done bends the bed or moves the headstock: one motor on the old lead screw, the spindle and the
 * stand as they are. What the lathe turned before it turns afterwards, so no bar is needed to prove it.
 */
export const nothingDisturbed = all(
  leadScrewAlone,
  not(newSpindleMotor),
  not(is('stand', 'stiff-stand')),
  not(is('which-lathe', 'buy-a-donor')),
  not(is('condition', 'spindle-bearings-too')),
);
