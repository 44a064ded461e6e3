import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import type { Quantity } from '../../core/quantity.ts';
import { differenceOf, productOf, quotientOf, smallestOf } from '../../core/steps.ts';
import { screwDriveTorque } from '../../formulas/screw-drive.ts';
import { screwLifeHours } from '../../formulas/screw-life.ts';
import {
  type EndFixity,
  screwBucklingLoad,
  screwShortLimit,
  screwSpeedLimit,
  screwWhirlSpeed,
} from '../../formulas/screw-limits.ts';
import { slidingScrewEfficiency } from '../../formulas/sliding-screw.ts';
import { figuresFor, type Slide, usual } from './axis.ts';

const mostDepth = usual(0.2, '1', 'a thread seldom takes more than a fifth of the bar');

/** Depth of both flanks of a sliding thread together, m: its pitch, but never more than a fifth of the bar. */
const threadDepth = (outside: Quantity | undefined, lead: Quantity | undefined) =>
  smallestOf({ lead, fifth: productOf('m', { outside, mostDepth }) });

/** Root of a sliding screw, m, from its outside. */
export const slidingRoot = (outside: Quantity | undefined, lead: Quantity | undefined) =>
  differenceOf(outside, threadDepth(outside, lead));

/** Efficiency of a sliding screw from its outside and its lead: more is lost than reaches the nut. */
export function slidingEfficiency(outside: Quantity | undefined, lead: Quantity | undefined) {
  const half = productOf('m', { depth: threadDepth(outside, lead), half: usual(0.5, '1', 'half of it') });
  return derive(slidingScrewEfficiency, {
    meanDiameter: differenceOf(outside, half),
    lead,
    friction: usual(0.15, '1', 'oiled steel on bronze or iron; common practice'),
    flankAngle: usual(Math.PI / 12, 'rad', 'half of a thread of 30 degrees; the inch form has 29'),
    collarFriction: usual(0, '1', 'the push is taken by rolling bearings'),
    collarDiameter: usual(0, 'm', 'the push is taken by rolling bearings'),
  });
}

type Held = (look: Look) => EndFixity | undefined;

const turning = (slide: Slide, look: Look, speed: Quantity | undefined) =>
  quotientOf('rev/s', speed, look.figure(`${slide}-lead`));

/** How fast the screw turns and may turn. */
function screwSpeedFigures(slide: Slide, held: Held): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  return [
    figure('screw-speed-rapid', 'Screw speed at rapid', (look) =>
      turning(slide, look, look.fact(`${slide}-rapid`)),
    ),
    figure('whirl-speed', 'Speed at which the screw begins to whip', (look) =>
      derive(screwWhirlSpeed, {
        rootDiameter: of(look)('screw-root'),
        length: of(look)('whirl-length'),
        endFixity: held(look),
      }),
    ),
    figure('ball-speed-limit', 'Fastest that the balls may run round', (look) =>
      derive(screwSpeedLimit, {
        ballCircle: of(look)('ball-circle'),
        dn: usual(50_000, 'mm·rpm', 'the lower figure that makers give, for rolled screws'),
      }),
    ),
  ];
}

/** Push that the screw may take, N: what bends it sideways, or crushes it where it is short. */
function bucklingLoad(look: Look, slide: Slide, held: Held): Quantity | undefined {
  const rootDiameter = look.figure(`${slide}-screw-root`);
  const length = look.figure(`${slide}-buckling-length`);
  return smallestOf({
    slender: derive(screwBucklingLoad, { rootDiameter, length, endFixity: held(look) }),
    short: derive(screwShortLimit, { rootDiameter }),
  });
}

/** What the screw itself stands: speed, push, balls, years. `held` says how its ends are held. */
export function screwLimitFigures(slide: Slide, held: Held): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  return [
    ...screwSpeedFigures(slide, held),
    figure('buckling-load', 'Push that the screw may take', (look) => bucklingLoad(look, slide, held)),
    figure('screw-life', 'Hours of cutting that the ball screw outlasts', (look) =>
      derive(screwLifeHours, {
        dynamicRating: of(look)('dynamic-rating'),
        meanForce: of(look)('push-needed'),
        loadFactor: usual(1.5, '1', 'ordinary cutting with some knocks'),
        speed: turning(slide, look, of(look)('working-speed')),
      }),
    ),
    figure('screw-torque', 'Torque at the screw for the largest push', (look) =>
      derive(screwDriveTorque, {
        force: of(look)('push-needed'),
        lead: of(look)('lead'),
        efficiency: of(look)('screw-efficiency'),
      }),
    ),
  ];
}
