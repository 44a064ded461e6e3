import { all, any, asked, below, is, known, not } from '../../core/condition.ts';

/** The cross slide gets a motor and is not already a converted one. */
export const crossDriven = all(
  not(is('driven-axes', 'carriage-only')),
  not(is('which-lathe', 'dead-training-machine')),
);

/** Any cross screw is fitted by us. */
export const crossWork = asked('cross-screw');

export const ballScrew = is('cross-screw', 'ball-screw-12', 'ball-screw-16', 'ball-screw-8');

/** What a ready kit brings with it does not have to be bought or drawn. */
export const noKit = not(is('buying', 'ready-kit'));

/** Room that the nut and its flange need, metres: 30 mm flats and 2 mm; 40 mm flats and 2 mm. From memory: measure the nut. */
export const NEED_12 = 0.032;
export const NEED_16 = 0.042;
/** The deepest relief that usually leaves 5 mm of casting; common practice, no source. */
export const DEEPEST_RELIEF = 0.008;

/** The tunnel is too low for the nut, or nobody has measured it. */
export const tunnelTooLow = any(
  all(is('cross-screw', 'ball-screw-12'), any(not(known('tunnel-height')), below('tunnel-height', NEED_12))),
  all(is('cross-screw', 'ball-screw-16'), any(not(known('tunnel-height')), below('tunnel-height', NEED_16))),
);
