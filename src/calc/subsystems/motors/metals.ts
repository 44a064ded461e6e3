import type { Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { published, type Quantity } from '../../core/quantity.ts';
import { largestOf, smallestOf } from '../../core/steps.ts';
import { cuttingForce } from '../../formulas/cutting.ts';
import { cuttingMaterial } from '../../formulas/cutting-materials.ts';
import type { DrillPoint } from '../../formulas/drill-materials.ts';
import { drillLargest, drillThrust } from '../../formulas/drilling.ts';
import { type Metal, metalsToCut } from '../purpose/metals.ts';
import { usual } from './axis.ts';

/** One figure for each metal that this machine shall cut. */
const forMetals = (look: Look, of: (metal: Metal) => Quantity | undefined) =>
  Object.fromEntries(metalsToCut(look).map((metal) => [metal.id, of(metal)]));

/** Force of a cut in the worst chosen metal, N, of a sharp tool; depth (or blade width) in m, feed in m/rev. */
export const worstCut = (look: Look, depth: Quantity | undefined, feed: Quantity | undefined) =>
  largestOf(
    forMetals(look, ({ cut }) => {
      const { kc11, mc, source } = cuttingMaterial(cut)!;
      const ref = `${source.ref}, ${source.at}`;
      return derive(cuttingForce, {
        kc11: published(kc11, 'Pa', ref),
        mc: published(mc, '1', ref),
        depth,
        feed,
        enteringAngle: usual(Math.PI / 2, 'rad', 'a square shoulder'),
      });
    }),
  );

/** Force that pushes a twist drill into the worst chosen metal, N. */
export const worstDrill = (
  look: Look,
  diameter: Quantity | undefined,
  feed: Quantity | undefined,
  point: DrillPoint,
) =>
  largestOf(forMetals(look, ({ drill }) => derive(drillThrust, { diameter, feed, material: drill, point })));

/** The largest drill that a force pushes into every chosen metal, m. */
export const largestDrill = (
  look: Look,
  thrust: Quantity | undefined,
  feedShare: Quantity,
  point: DrillPoint,
) =>
  smallestOf(
    forMetals(look, ({ drill }) => derive(drillLargest, { thrust, feedShare, material: drill, point })),
  );
