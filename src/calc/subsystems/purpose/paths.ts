import { all, any, is, not } from '../../core/condition.ts';

/** The slides, screws and mounts are there already. */
export const trainingMachine = is('which-lathe', 'dead-training-machine');

/** Another lathe stays in working order. */
export const hasSpareLathe = is('which-lathe', 'spare-lathe');

export const synchroniser = is('control', 'thread-synchroniser');

/** One motor, on the lead screw that is there: cross slide, tools and tailstock are worked by hand as before. */
export const leadScrewAlone = all(
  is('driven-axes', 'carriage-only'),
  is('carriage-drive', 'original-lead-screw'),
);

/**
 * A synchroniser box on nothing but the lead screw: no new screw or nut, no casting is touched, and the lathe still turns
 * by hand while it is built.
 */
export const leadScrewSynchroniser = all(synchroniser, leadScrewAlone);

/** A synchroniser that drives more than the old lead screw. */
export const widerSynchroniser = all(synchroniser, not(leadScrewAlone));

/** Only one of the two slides gets a motor. */
export const oneSlide = is('driven-axes', 'carriage-only', 'cross-slide-only');

/** New screws want brackets, and nothing on the lathe may be drilled for them. */
export const clampedBrackets = all(
  is('hand-use', 'fully-reversible'),
  any(
    is('carriage-drive', 'ball-screw-front', 'ball-screw-back', 'sliding-screw', 'rack-pinion'),
    is('cross-screw', 'ball-screw-12', 'ball-screw-16', 'ball-screw-8', 'sliding-cross-screw'),
  ),
);
