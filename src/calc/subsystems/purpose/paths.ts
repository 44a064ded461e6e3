import { all, any, is } from '../../core/condition.ts';

/** The slides, screws and mounts are there already. */
export const trainingMachine = is('which-lathe', 'dead-training-machine');

/** Another lathe stays in working order. */
export const hasSpareLathe = is('which-lathe', 'spare-lathe');

export const synchroniser = is('control', 'thread-synchroniser');

/**
 * One motor on the lead screw that is there, led by a synchroniser box: no screw, no nut, no casting is touched, and the
 * lathe still turns by hand while it is built.
 */
export const leadScrewSynchroniser = all(
  synchroniser,
  is('driven-axes', 'carriage-only'),
  is('carriage-drive', 'original-lead-screw'),
);

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
