import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import type { Quantity } from '../../core/quantity.ts';
import { largestOf, productOf, sumOf } from '../../core/steps.ts';
import { screwThrust } from '../../formulas/screw-drive.ts';
import { slideFriction, slideThrust } from '../../formulas/slide.ts';
import { figuresFor, type Slide, usual } from './axis.ts';

const friction = usual(0.15, '1', 'oiled iron on iron; common practice');
const nothing = usual(0, 'N', 'nothing presses the slide down');
const massFact: Readonly<Record<Slide, string>> = { carriage: 'saddle-mass', cross: 'cross-slide-mass' };
const gib: Readonly<Record<Slide, number>> = { carriage: 60, cross: 40 };

const wayOf = (look: Look, slide: Slide) => ({
  mass: look.fact(massFact[slide]),
  friction,
  gibDrag: usual(gib[slide], 'N', 'a gib set to slide without shake drags 30 to 80 N; common practice'),
  wedgeAngle: usual(Math.PI / 2, 'rad', 'taken as a flat way'),
});

/** Pull that moves the slide with no cut, N: as measured, else from its mass and its gib. */
const idleFriction = (look: Look, slide: Slide): Quantity | undefined =>
  look.measured(`${slide}-friction-force`) ??
  derive(slideFriction, { ...wayOf(look, slide), cuttingForce: nothing });

/**
 * Push that a slide needs, N: `axialForce` along it, friction, and what `cuttingForce` adds by pressing it down. The
 * owner's own pull stands for the friction where it was measured.
 */
export function pushNeeded(
  look: Look,
  slide: Slide,
  axialForce: Quantity | undefined,
  cuttingForce: Quantity | undefined = nothing,
): Quantity | undefined {
  const measured = look.measured(`${slide}-friction-force`);
  if (!measured) return derive(slideThrust, { ...wayOf(look, slide), axialForce, cuttingForce });
  return sumOf({ axialForce, measured, pressed: productOf('N', { friction, cuttingForce }) });
}

/** What a slide is able to push, and the largest push that the work asks of it. */
export function pushFigures(slide: Slide, needs: readonly string[]): readonly Figure[] {
  const { of, figure } = figuresFor(slide);
  const thrust = (look: Look, torque: Quantity | undefined) =>
    derive(screwThrust, {
      torque,
      lead: of(look)('lead'),
      efficiency: of(look)('screw-efficiency'),
      ratio: of(look)('ratio'),
      beltEfficiency: of(look)('drive-efficiency'),
    });
  return [
    figure('friction', 'Force to slide it without a cut', (look) => idleFriction(look, slide)),
    figure('push-needed', 'Largest push that the work needs', (look) => {
      const arising = needs.filter((name) => of(look)(name) !== undefined);
      return largestOf(Object.fromEntries(arising.map((name) => [name, of(look)(name)])));
    }),
    figure('thrust', 'Push that is usable while cutting (thrust)', (look) =>
      thrust(look, of(look)('torque-working')),
    ),
    figure('thrust-rapid', 'Push that is usable at rapid', (look) => thrust(look, of(look)('torque-rapid'))),
    figure('stall-thrust', 'Most push, when the slide runs into something', (look) =>
      thrust(look, of(look)('peak-torque')),
    ),
  ];
}
