import { any, atLeast, below, is, not } from '../../core/condition.ts';
import { trainingMachine } from '../purpose/paths.ts';

/** The carriage gets a motor, old screw or new. */
export const carriageDriven = not(is('driven-axes', 'cross-slide-only'));

/** There is something to decide about the carriage: a training machine has its screw and mounts. */
export const carriageAsked = not(any(is('driven-axes', 'cross-slide-only'), trainingMachine));

export const ballOnCarriage = is('carriage-drive', 'ball-screw-front', 'ball-screw-back');
export const newCarriageScrew = is('carriage-drive', 'ball-screw-front', 'ball-screw-back', 'sliding-screw');
export const leadScrewKept = is('carriage-drive', 'original-lead-screw');
export const beltOnCarriage = is('carriage-coupling', 'carriage-belt-1-1', 'carriage-belt-2-1');

/** Brackets, nut housings, belt drives and end blocks come with the kit. */
export const readyKit = is('buying', 'ready-kit');
export const noKit = not(readyKit);

/** Nothing may be cut or drilled that cannot be put back. */
export const fullyReversible = is('hand-use', 'fully-reversible');

/** By swing: small to 220 mm, large above 280 mm. */
export const smallLathe = below('swing', 0.2201);
export const largeLathe = atLeast('swing', 0.2801);

/** One place for the limit, so that no two sheets differ. */
export const fixedEndLimit = 'play at the fixed end under 0.01 mm to accept, under 0.005 mm is good';
