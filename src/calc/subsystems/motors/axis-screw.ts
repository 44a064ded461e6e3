import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import type { Quantity } from '../../core/quantity.ts';
import { differenceOf, productOf, quotientOf, smallestOf, sumOf } from '../../core/steps.ts';
import { screwDriveTorque } from '../../formulas/screw-drive.ts';
import { screwLifeHours } from '../../formulas/screw-life.ts';
import {
  type EndFixity,
  screwBucklingLoad,
  screwShortLimit,
  screwSpeedLimit,
  screwWhirlSpeed,
} from '../../formulas/screw-limits.ts';
import { screwLengthBudget, screwThreadLength } from '../../formulas/screw-shape.ts';
import { slidingScrewEfficiency } from '../../formulas/sliding-screw.ts';
import { figuresOf, type Slide, slideFigure, usual } from './axis.ts';

/** What lies along a screw beside travel and nut, all m. Gaps run from the thread to the middle of a bearing. */
export interface Layout {
  readonly runOff: number;
  /** Squeezed covers, both sides together. */
  readonly covers: number;
  readonly gapFixed: number;
  readonly gapFar: number;
  readonly fixedJournal: number;
  readonly driveStub: number;
  readonly floatingJournal: number;
}

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

const why = 'usual for a screw of this size; your drawing decides';
const length = (value: number): Quantity => usual(value, 'm', why);

/** Lengths along the screw: thread, whole, between bearings, and the part that is pushed. */
export function screwLengthFigures(slide: Slide, layout: Layout): readonly Figure[] {
  const of = figuresOf(slide);
  const figure = (name: string, label: string, value: (look: Look) => Quantity | undefined) =>
    slideFigure(slide, name, label, value);
  const onThread = (look: Look) => ({
    travel: look.fact(`${slide}-travel`),
    nut: of(look)('nut-length'),
    runOff: length(layout.runOff),
    covers: length(layout.covers),
  });
  const ends = {
    fixedJournal: length(layout.fixedJournal),
    driveStub: length(layout.driveStub),
    floatingJournal: length(layout.floatingJournal),
  };
  return [
    figure('screw-thread', 'Threaded length of the screw', (look) =>
      derive(screwThreadLength, onThread(look)),
    ),
    figure('screw-length', 'Whole length of the screw', (look) =>
      derive(screwLengthBudget, { ...onThread(look), ...ends }),
    ),
    figure('screw-cut-off', 'To saw off at the floating end', (look) =>
      differenceOf(look.measured(`${slide}-screw-bought`), of(look)('screw-length')),
    ),
    figure('whirl-length', 'Screw between its bearings, or to its free end', (look) =>
      sumOf({
        fixed: length(layout.gapFixed),
        thread: of(look)('screw-thread'),
        far: length(layout.gapFar),
      }),
    ),
    figure('buckling-length', 'Screw that is pushed, at most', (look) =>
      sumOf({
        gap: length(layout.gapFixed),
        runOff: length(layout.runOff),
        cover: length(layout.covers / 2),
        travel: look.fact(`${slide}-travel`),
        nut: of(look)('nut-length'),
      }),
    ),
  ];
}

/** What the screw itself stands: speed, push, balls, years. `held` says how its ends are held. */
export function screwLimitFigures(
  slide: Slide,
  held: (look: Look) => EndFixity | undefined,
): readonly Figure[] {
  const of = figuresOf(slide);
  const figure = (name: string, label: string, value: (look: Look) => Quantity | undefined) =>
    slideFigure(slide, name, label, value);
  const turning = (look: Look, speed: Quantity | undefined) => quotientOf('rev/s', speed, of(look)('lead'));
  return [
    figure('screw-speed-rapid', 'Screw speed at rapid', (look) => turning(look, look.fact(`${slide}-rapid`))),
    figure('whirl-speed', 'Speed at which the screw begins to whip', (look) =>
      derive(screwWhirlSpeed, {
        rootDiameter: of(look)('screw-root'),
        length: of(look)('whirl-length'),
        endFixity: held(look),
      }),
    ),
    figure('buckling-load', 'Push that the screw may take', (look) => {
      const rootDiameter = of(look)('screw-root');
      const slender = { rootDiameter, length: of(look)('buckling-length'), endFixity: held(look) };
      return smallestOf({
        slender: derive(screwBucklingLoad, slender),
        short: derive(screwShortLimit, { rootDiameter }),
      });
    }),
    figure('ball-speed-limit', 'Fastest that the balls may run round', (look) =>
      derive(screwSpeedLimit, {
        ballCircle: of(look)('ball-circle'),
        dn: usual(50_000, 'mm·rpm', 'the lower figure that makers give, for rolled screws'),
      }),
    ),
    figure('screw-life', 'Hours of cutting that the ball screw outlasts', (look) =>
      derive(screwLifeHours, {
        dynamicRating: of(look)('dynamic-rating'),
        meanForce: of(look)('push-needed'),
        loadFactor: usual(1.5, '1', 'ordinary cutting with some knocks'),
        speed: turning(look, of(look)('working-speed')),
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
