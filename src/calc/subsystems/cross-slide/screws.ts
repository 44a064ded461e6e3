import type { Look } from '../../core/figure.ts';
import type { Belt } from '../motors/axis-belt.ts';
import type { BoughtScrew, Screw } from '../motors/screw-sizes.ts';

/** Cross screws as sold; 12 × 4 is what most cross slides take. From memory of the trade. */
const screws: Readonly<Record<string, Screw>> = {
  'ball-screw-8': {
    lead: 0.0025,
    outside: 0.008,
    root: 0.0066,
    nut: 0.03,
    nutStiffness: 4e7,
    balls: { circle: 0.0083, dynamicRating: 1600 },
  },
  'ball-screw-12': {
    lead: 0.004,
    outside: 0.012,
    root: 0.0096,
    nut: 0.035,
    nutStiffness: 8e7,
    balls: { circle: 0.0125, dynamicRating: 3900 },
  },
  'ball-screw-16': {
    lead: 0.005,
    outside: 0.016,
    root: 0.0132,
    nut: 0.05,
    nutStiffness: 1.2e8,
    balls: { circle: 0.01675, dynamicRating: 7600 },
  },
  'sliding-cross-screw': { lead: 0.003, outside: 0.012, root: 0.0085, nut: 0.045, nutStiffness: 6e7 },
};

/** A double nut takes 30 mm more of the screw. */
const doubled = (screw: Screw): Screw => ({
  ...screw,
  nut: screw.nut + 0.03,
  nutStiffness: screw.nutStiffness * 1.5,
});

/** The new screw of the cross slide; undefined where the old one stays. */
export function crossScrew(look: Look): BoughtScrew | undefined {
  const option = look.option('cross-screw') ?? '';
  const screw = screws[option];
  if (!screw) return undefined;
  const isDouble = look.chosen('cross-nut', 'cross-double-nut');
  return { screw: isDouble ? doubled(screw) : screw, decision: 'cross-screw', option };
}

/** Two equal pulleys where the motor stands beside or behind the slide. */
export function crossBelt(look: Look): Belt | undefined {
  const option = look.option('cross-motor-place');
  if (option !== 'front-belt' && option !== 'rear-belt') return undefined;
  const light =
    !look.chosen('motor-size', 'face-86-both') &&
    look.chosen('axis-motor', 'open-loop-stepper', 'closed-loop-stepper');
  const teeth = light ? { motor: 20, screw: 20, belt: 60 } : { motor: 24, screw: 24, belt: 70 };
  return { ...teeth, decision: 'cross-motor-place', option };
}

/** Play of each nut, m, from memory of the trade: what an indicator shows on one as it comes. */
export const nutPlay: Readonly<Record<string, number>> = {
  'cross-single-nut': 30e-6,
  'cross-oversize-balls': 8e-6,
  'cross-double-nut': 2e-6,
};

/** The same where there is no ball nut, by screw. */
export const slidingPlay: Readonly<Record<string, number>> = {
  'original-cross-screw': 50e-6,
  'sliding-cross-screw': 15e-6,
};
