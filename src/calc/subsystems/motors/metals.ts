import type { Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import { published, type Quantity } from '../../core/quantity.ts';
import { largestOf, smallestOf } from '../../core/steps.ts';
import { cuttingForce } from '../../formulas/cutting.ts';
import { cuttingMaterial } from '../../formulas/cutting-materials.ts';
import type { DrillMaterial, DrillPoint } from '../../formulas/drill-materials.ts';
import { drillLargest, drillThrust } from '../../formulas/drilling.ts';
import { usual } from './axis.ts';

/**
 * Rows of the tables of force for each metal of the question. Where a name covers several, the heavier ordinary one:
 * bar sold as mild steel is seldom under a quarter of a percent of carbon, and "alloy" holds stainless as well.
 */
const rows: Readonly<Record<string, { cut: string; drill: DrillMaterial }>> = {
  brass: { cut: 'brass', drill: 'brass-leaded' },
  aluminium: { cut: 'aluminium-aged', drill: 'aluminium' },
  'free-cutting-steel': { cut: 'mild-steel', drill: 'free-cutting-steel' },
  'mild-steel': { cut: 'medium-carbon-steel', drill: 'mild-steel' },
  'cast-iron': { cut: 'grey-iron', drill: 'grey-iron' },
  'alloy-steel': { cut: 'stainless-austenitic', drill: 'chrome-molybdenum-steel' },
};

type Force = Record<string, Quantity | undefined>;

/** One figure for each chosen metal; mild steel where the question is not asked. */
function forMetals(
  look: Look,
  of: (row: { cut: string; drill: DrillMaterial }) => Quantity | undefined,
): Force {
  const ticked = Object.entries(rows).filter(([metal]) => look.chosen('materials', metal));
  const metals = ticked.length > 0 ? ticked : [['mild-steel', rows['mild-steel']!] as const];
  return Object.fromEntries(metals.map(([metal, row]) => [metal, of(row)]));
}

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
