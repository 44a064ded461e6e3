import type { Look } from '../../core/figure.ts';
import type { Belt } from '../motors/axis-belt.ts';
import type { BoughtScrew, Screw } from '../motors/screw-sizes.ts';

/** 16 × 5 serves small and medium carriages, 20 × 5 large ones. From memory of the trade. */
const ball16: Screw = {
  lead: 0.005,
  outside: 0.016,
  root: 0.0132,
  nut: 0.05,
  nutStiffness: 1.2e8,
  balls: { circle: 0.01675, dynamicRating: 7600 },
};

const ball20: Screw = {
  lead: 0.005,
  outside: 0.02,
  root: 0.0172,
  nut: 0.053,
  nutStiffness: 1.5e8,
  balls: { circle: 0.02075, dynamicRating: 9500 },
};

const sliding20: Screw = { lead: 0.004, outside: 0.02, root: 0.0155, nut: 0.06, nutStiffness: 1e8 };
const sliding24: Screw = { lead: 0.005, outside: 0.024, root: 0.0185, nut: 0.06, nutStiffness: 1.2e8 };

/** A double nut, or one with a spacer, is so much longer and stiffer than a single one. */
const preloaded = (screw: Screw): Screw => ({
  ...screw,
  nut: screw.nut * 1.7,
  nutStiffness: screw.nutStiffness * 1.5,
});

/** Over 280 mm of swing. */
const isLarge = (look: Look): boolean => (look.fact('swing')?.value ?? 0) > 0.28;

/** The new screw of the carriage; undefined where the old one or the rack stays. */
export function carriageScrew(look: Look): BoughtScrew | undefined {
  const option = look.option('carriage-drive') ?? '';
  const bought = { decision: 'carriage-drive', option };
  if (option === 'sliding-screw') return { ...bought, screw: isLarge(look) ? sliding24 : sliding20 };
  if (option !== 'ball-screw-front' && option !== 'ball-screw-back') return undefined;
  const single = isLarge(look) ? ball20 : ball16;
  return { ...bought, screw: look.chosen('carriage-nut', 'rolled-single-nut') ? single : preloaded(single) };
}

const teeth = {
  'carriage-belt-1-1': {
    light: { motor: 20, screw: 20, belt: 60 },
    heavy: { motor: 24, screw: 24, belt: 70 },
  },
  'carriage-belt-2-1': {
    light: { motor: 20, screw: 40, belt: 70 },
    heavy: { motor: 24, screw: 48, belt: 80 },
  },
} as const;

/** Pulleys and belt of the carriage; servos and large motors turn faster or pull harder, and get more teeth. */
export function carriageBelt(look: Look): Belt | undefined {
  const option = look.option('carriage-coupling');
  if (option !== 'carriage-belt-1-1' && option !== 'carriage-belt-2-1') return undefined;
  const light =
    look.chosen('motor-size', 'face-57-both') &&
    look.chosen('axis-motor', 'open-loop-stepper', 'closed-loop-stepper');
  return { ...teeth[option][light ? 'light' : 'heavy'], decision: 'carriage-coupling', option };
}
