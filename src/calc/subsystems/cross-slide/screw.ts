import { all, any, asked, below, is, known, not } from '../../core/condition.ts';
import { fullyReversible } from '../carriage/screw.ts';

export { fullyReversible };

import { trainingMachine } from '../purpose/paths.ts';

/** The cross slide gets a motor, old screw or new. */
export const crossDriven = not(is('driven-axes', 'carriage-only'));

/** There is something to decide about the cross slide: a training machine has its screw and mounts. */
export const crossAsked = not(any(is('driven-axes', 'carriage-only'), trainingMachine));

export const ballOnCross = is('cross-screw', 'ball-screw-12', 'ball-screw-16', 'ball-screw-8');
export const newCrossScrew = is(
  'cross-screw',
  'ball-screw-12',
  'ball-screw-16',
  'ball-screw-8',
  'sliding-cross-screw',
);

export const beltOnCross = is('cross-motor-place', 'front-belt', 'rear-belt');

/**
 * Height in metres that a nut needs in the tunnel: the largest of body, flange across its flats and housing, and 2 mm.
 * Flanges across flats of 30 mm (12 mm screw), 40 mm (16 mm) and 22 mm (8 to 10 mm) are from memory of the trade.
 */
export const nutHeight = { eight: 0.024, twelve: 0.032, sixteen: 0.042 } as const;

/** The deepest slot that leaves a sound web in most saddles, metres; from memory of the trade, measure the web. */
const deepestRelief = 0.01;

const measuredUnder = (height: number) => all(known('tunnel-height'), below('tunnel-height', height));
const notKnownTall = (height: number) => any(not(known('tunnel-height')), below('tunnel-height', height));

/** Measured, and too low for a 12 mm screw without cutting. */
export const tooLowForTwelve = measuredUnder(nutHeight.twelve);
/** Measured, and too low for the small screw without cutting. */
export const tooLowForEight = measuredUnder(nutHeight.eight);
/** Measured, and too low for a 16 mm screw even with the deepest slot. */
export const hopelessForSixteen = measuredUnder(nutHeight.sixteen - deepestRelief);

/** The saddle is cut so that the nut passes: the tunnel is unknown or too low, and cutting is not ruled out. */
export const relievesSaddle = all(
  not(fullyReversible),
  any(
    all(is('cross-screw', 'ball-screw-12'), notKnownTall(nutHeight.twelve)),
    all(is('cross-screw', 'ball-screw-16'), notKnownTall(nutHeight.sixteen)),
  ),
);

/** Any cross screw is fitted by us. */
export const crossWork = asked('cross-screw');

/** What a ready kit brings with it does not have to be bought. */
export const noKit = not(is('buying', 'ready-kit'));
