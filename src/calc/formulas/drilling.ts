import type { Formula } from '../core/formula.ts';
import { type DrillMaterial, type DrillPoint, drillMaterials, pointFactors } from './drill-materials.ts';

const SOURCE = 'Tungaloy catalogue';
const NO_ANSWER = 'The catalogue prints the equation and its constants, but no worked answer.';

const materialFactor = (material: DrillMaterial): number => drillMaterials[material]?.factor ?? Number.NaN;
const pointFactor = (point: DrillPoint): number => pointFactors[point] ?? Number.NaN;

type Drill = { diameter: number; feed: number; material: DrillMaterial };

/**
 * Force that pushes a twist drill into solid metal, N; diameter in m, feed in m/rev. The catalogue's equation is
 * for a sharp ordinary point; other points by their factor. It sizes the carriage drive for high-speed-steel drills.
 */
export const drillThrust: Formula<Drill & { point: DrillPoint }> = {
  id: 'drill-thrust',
  label: 'Thrust of a twist drill',
  equation: 'thrust = 570 × K(material) × p(point) × diameter × feed ^ 0.85, with mm and mm a turn',
  tex: 'T = 570\\,K\\,p\\,D\\,f^{0.85}',
  inputs: { diameter: 'm', feed: 'm/rev', material: 'case', point: 'case' },
  unit: 'N',
  source: { ref: SOURCE, at: 'p. L068, thrust of a drill; the factor of the point is common practice' },
  valid: {},
  unverified: NO_ANSWER,
  compute: ({ diameter, feed, material, point }) =>
    570 * materialFactor(material) * pointFactor(point) * 1000 * diameter * (1000 * feed) ** 0.85,
};

/** Torque that a sharp twist drill asks of the spindle, N·m; same constants as `drillThrust`. A pilot hardly lowers it. */
export const drillTorque: Formula<Drill> = {
  id: 'drill-torque',
  label: 'Torque of a twist drill',
  equation: 'torque = K(material) × diameter² × (0.630 + 16.84 × feed) ÷ 100, with mm and mm a turn',
  tex: 'M = \\frac{K\\,D^2\\,(0.630 + 16.84\\,f)}{100}',
  inputs: { diameter: 'm', feed: 'm/rev', material: 'case' },
  unit: 'N·m',
  source: { ref: SOURCE, at: 'p. L068, torque of a drill' },
  valid: {},
  unverified: NO_ANSWER,
  compute: ({ diameter, feed, material }) =>
    (materialFactor(material) * (1000 * diameter) ** 2 * (0.63 + 16.84 * 1000 * feed)) / 100,
};

/**
 * Largest twist drill that a thrust in N can push, m, with the feed a fixed share of the diameter
 * (1/80 is usual). The inverse of `drillThrust`, so its constants are the same.
 */
export const drillLargest: Formula<{
  thrust: number;
  feedShare: number;
  material: DrillMaterial;
  point: DrillPoint;
}> = {
  id: 'drill-largest',
  label: 'Largest twist drill for a thrust',
  equation: 'diameter = (thrust ÷ (570 × K(material) × p(point) × feed share ^ 0.85)) ^ (1 ÷ 1.85), in mm',
  tex: 'D = \\left(\\frac{T}{570\\,K\\,p\\,s^{0.85}}\\right)^{1/1.85}',
  inputs: { thrust: 'N', feedShare: '1', material: 'case', point: 'case' },
  unit: 'm',
  source: { ref: SOURCE, at: 'p. L068, thrust of a drill, solved for the diameter' },
  valid: {},
  unverified: NO_ANSWER,
  compute: ({ thrust, feedShare, material, point }) => {
    const perPower = 570 * materialFactor(material) * pointFactor(point) * feedShare ** 0.85;
    return (thrust / perPower) ** (1 / 1.85) / 1000;
  },
};

export const drillingFormulas = [drillThrust, drillTorque, drillLargest] as const;
