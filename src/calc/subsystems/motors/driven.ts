import { any, is, not } from '../../core/condition.ts';

/** The carriage gets a motor. */
export const carriageDriven = not(is('driven-axes', 'cross-slide-only'));

/** One slide driven: one motor, one drive, one set of leads. */
export const oneSlide = is('driven-axes', 'carriage-only', 'cross-slide-only');

/** The control runs programs; a thread synchroniser only follows the spindle. */
export const runsPrograms = not(is('control', 'thread-synchroniser'));

/** The cross slide gets a motor. */
export const crossDriven = not(is('driven-axes', 'carriage-only'));

/** The tailstock quill gets a motor. */
export const tailstockDriven = any(is('driven-axes', 'both-and-tailstock'), is('holes', 'motor-tailstock'));
