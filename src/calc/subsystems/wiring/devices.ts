import type { Look } from '../../core/figure.ts';

/** Said beside every constant of a device. */
export const memory = 'from memory of the trade; the plate of the device decides';
export const sheet = 'from memory of the trade: the data sheet of the part you buy decides';

/** The spindle motor the lathe came with stays, and with it the voltage on its plate. */
export const keepsSpindleMotor = (look: Look): boolean =>
  look.chosen('spindle-motor', 'keep-single-phase', 'keep-speed-knob');

/** What turns the spindle hangs on electronics that stand in the cabinet. */
export const spindleDriveInCabinet = (look: Look): boolean =>
  look.chosen('spindle-motor', 'three-phase-drive', 'doubler-drive', 'brushless-kit', 'servo-spindle');

/** Electronics that hold a charge of mains voltage after they are switched off. */
export const holdsCharge = (look: Look): boolean =>
  spindleDriveInCabinet(look) || look.chosen('axis-motor', 'mains-servo');

export const isComputer = (look: Look): boolean =>
  look.chosen(
    'control',
    'parallel-port-pc',
    'two-parallel-ports-pc',
    'motion-card-pc',
    'desktop-with-controller',
  );

/** How many slides have a motor. */
export const drivenSlides = (look: Look): number =>
  look.chosen('driven-axes', 'carriage-only', 'cross-slide-only') ? 1 : 2;

/** Slides and a tailstock that have a motor and a drive. */
export const drivenMotors = (look: Look): number =>
  drivenSlides(look) +
  (look.chosen('driven-axes', 'both-and-tailstock') || look.chosen('holes', 'motor-tailstock') ? 1 : 0);
