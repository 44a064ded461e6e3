import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import type { Quantity } from '../../core/quantity.ts';
import { differenceOf, productOf, quotientOf } from '../../core/steps.ts';
import type { DrillPoint } from '../../formulas/drill-materials.ts';
import { feedForce, passiveForce } from '../../formulas/tool-forces.ts';
import { practice, slideFigure, usual } from '../motors/axis.ts';
import { pushNeeded } from '../motors/axis-push.ts';
import { largestDrill, worstCut, worstDrill } from '../motors/metals.ts';
import { comfortOf } from '../motors/motors-table.ts';

/** A worn edge pushes so much harder along the feed. */
export const wear = usual(1.3, '1', 'an edge that has worn a little; common practice');
export const feedRatio = usual(0.5, '1', 'feed force about half of the cutting force');
export const passiveRatio = usual(
  0.5,
  '1',
  'up to half of the cutting force with a small depth and a round nose',
);

const feedShare = usual(1 / 80, '1', 'feed of a twist drill, an eightieth of its diameter; common practice');

const cut = (look: Look): Quantity | undefined =>
  worstCut(look, look.fact('cut-depth'), look.fact('cut-feed'));

const turning = (look: Look): Quantity | undefined => {
  const cuttingForce = look.figure('cutting-force');
  const sharp = derive(feedForce, { cuttingForce, ratio: feedRatio });
  return pushNeeded(look, 'carriage', productOf('N', { sharp, wear }), cuttingForce);
};

const facing = (look: Look): Quantity | undefined => {
  const cuttingForce = look.figure('cutting-force');
  return pushNeeded(
    look,
    'carriage',
    derive(passiveForce, { cuttingForce, ratio: passiveRatio }),
    cuttingForce,
  );
};

function drilling(look: Look): Quantity | undefined {
  const diameter = look.fact('largest-drill');
  return worstDrill(look, diameter, productOf('m/rev', { diameter, feedShare }), 'sharp');
}

const inPost = (look: Look): boolean => look.chosen('holes', 'drill-in-tool-post');

/** Largest drill that leaves the margin its motor wants: what is usable, over the margin, less the friction. */
const drillFor =
  (point: DrillPoint) =>
  (look: Look): Quantity | undefined => {
    const margin = usual(comfortOf(look), '1', `margin for this kind of motor; ${practice}`);
    const kept = quotientOf('N', look.figure('carriage-thrust'), margin);
    return largestDrill(look, differenceOf(kept, look.figure('carriage-friction')), feedShare, point);
  };

/** What the work asks of the carriage. */
export const cutFigures: readonly Figure[] = [
  { id: 'cutting-force', label: 'Force of an ordinary cut in the hardest metal', of: cut },
  slideFigure('carriage', 'push-turning', 'Push for turning', turning),
  slideFigure('carriage', 'push-facing', 'Push to stand still while facing', facing),
  slideFigure('carriage', 'drill-thrust', 'Push of the largest drill', drilling),
  slideFigure('carriage', 'push-drilling', 'Push for drilling from the tool post', (look) =>
    inPost(look) ? pushNeeded(look, 'carriage', look.figure('carriage-drill-thrust')) : undefined,
  ),
  slideFigure('carriage', 'largest-drill', 'Largest drill into solid metal, margin kept', drillFor('sharp')),
  slideFigure(
    'carriage',
    'largest-drill-piloted',
    'Largest drill after a pilot hole as wide as its web, margin kept',
    drillFor('piloted'),
  ),
];
