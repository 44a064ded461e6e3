import { any, is, not } from '../../core/condition.ts';

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
