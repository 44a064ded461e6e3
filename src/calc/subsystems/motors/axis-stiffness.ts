import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import type { Quantity } from '../../core/quantity.ts';
import { quotientOf } from '../../core/steps.ts';
import { axisStiffness } from '../../formulas/lash.ts';
import { screwStiffness } from '../../formulas/screw-shape.ts';
import { figuresOf, type Slide, slideFigure, usual } from './axis.ts';
import { bracketStiffness, fixedEnd } from './axis-ends.ts';

/** Pull of the push test, the same for every slide. */
const pull = usual(200, 'N', 'the pull of the test with a spring scale');

const isHeldAtBothEnds = (look: Look, slide: Slide): boolean =>
  slide === 'carriage' && look.chosen('carriage-screw-ends', 'both-ends-held');

function rowOfSprings(look: Look, slide: Slide): Quantity | undefined {
  const of = figuresOf(slide)(look);
  const screw = derive(screwStiffness, {
    rootDiameter: of('screw-root'),
    length: of('buckling-length'),
    endFixity: isHeldAtBothEnds(look, slide) ? 'fixed' : 'fixed-free',
  });
  const parts = [screw, of('nut-stiffness'), of('end-stiffness'), bracketStiffness(look)];
  const stiffnesses = parts.filter((part) => part !== undefined);
  return stiffnesses.length === parts.length ? derive(axisStiffness, { stiffnesses }) : undefined;
}

/** Springs between motor and slide, and what they give. Ratings and play of the fixed end stand beside them. */
export function stiffnessFigures(slide: Slide): readonly Figure[] {
  const of = figuresOf(slide);
  return [
    slideFigure(slide, 'end-rating', 'Push that the fixed end stands', (look) =>
      fixedEnd(look, slide, 'N', ({ rating }, scale) => rating * scale),
    ),
    slideFigure(slide, 'end-stiffness', 'Stiffness of the fixed end', (look) =>
      fixedEnd(look, slide, 'N/m', ({ stiffness }, scale) => stiffness * scale),
    ),
    slideFigure(slide, 'stiffness', 'Stiffness of screw, nut, bearing and bracket', (look) =>
      rowOfSprings(look, slide),
    ),
    slideFigure(slide, 'give-expected', 'Give under a pull of 200 N, expected', (look) =>
      quotientOf('m', pull, of(look)('stiffness')),
    ),
  ];
}
