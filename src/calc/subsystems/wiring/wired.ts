import { all, any, is, not } from '../../core/condition.ts';

/** The spindle motor hangs on a drive with power electronics, which makes noise on the wires. */
export const noisySpindle = is('spindle-motor', 'three-phase-drive', 'doubler-drive', 'servo-spindle');

/** The spindle drive is of the three-phase kind: filter, screen and leakage come with it. */
export const phaseDrive = is('spindle-motor', 'three-phase-drive', 'doubler-drive');

/** The spindle motor comes with a drive of its own that is mounted, fed and screened in the cabinet. */
export const spindleOnDrive = any(noisySpindle, is('spindle-motor', 'brushless-kit'));

/** One slide driven: half the cables, half the switches. */
export const oneSlide = is('driven-axes', 'carriage-only', 'cross-slide-only');

/** A few wires only: one box, a spindle sensor, a motor or two. */
export const synchroniser = is('control', 'thread-synchroniser');

/** A program can start the spindle while a hand or a key is at the chuck. */
export const programStarts = not(synchroniser);

/** The carriage gets a screw that chips can spoil; the old lead screw and rack lie as open as they always did. */
export const newCarriageScrew = is('carriage-drive', 'ball-screw-front', 'ball-screw-back', 'sliding-screw');

/** The cross slide gets another screw. */
export const newCrossScrew = is(
  'cross-screw',
  'ball-screw-12',
  'ball-screw-16',
  'ball-screw-8',
  'sliding-cross-screw',
);

/** The slides of a training machine have ball screws already. */
const trainingMachine = is('which-lathe', 'dead-training-machine');

/** There is a screw worth covering. */
export const screwsToCover = any(newCarriageScrew, newCrossScrew, trainingMachine);
export const carriageScrewToCover = any(
  newCarriageScrew,
  all(trainingMachine, not(is('driven-axes', 'cross-slide-only'))),
);
export const crossScrewToCover = any(
  newCrossScrew,
  all(trainingMachine, not(is('driven-axes', 'carriage-only'))),
);

/** A computer that is not one piece with its outputs decides when the drives may run. */
export const computerRuns = is(
  'control',
  'parallel-port-pc',
  'two-parallel-ports-pc',
  'motion-card-pc',
  'desktop-with-controller',
  'small-board',
);

/** Motors that run away when their encoder is reversed; they are turned only after the stop is proved. */
export const servoAxes = is('axis-motor', 'mains-servo', 'used-dc-servo');

/** Axis motors that send an encoder signal back. */
export const axisEncoders = any(servoAxes, is('axis-motor', 'closed-loop-stepper'));

/** Cable that is bought as cable, screened, with connectors that lock. */
export const screenedWork = not(is('cable', 'unscreened-wire'));

/** A cabinet full of it: a small box takes one lot of small goods instead. */
export const cabinetWork = all(screenedWork, not(synchroniser));

/** Motor sets bring leads of two or three metres: long enough for a box beside the lathe. */
export const leadsInTheSet = all(synchroniser, axisEncoders);
