import type { Formula } from '../core/formula.ts';
import { roundArea, roundSection, steel } from './constants.ts';

/** How the two ends of a screw are held. A plain single bearing supports; a thrust pair fixes. */
export type EndFixity = 'fixed-free' | 'supported' | 'fixed-supported' | 'fixed';

/** Roots of the beam that whirls: MISUMI 2022 Economy, p. 991. */
export const whirlRoot: Readonly<Record<EndFixity, number>> = {
  'fixed-free': 1.875,
  supported: Math.PI,
  'fixed-supported': 3.927,
  fixed: 4.73,
};

/** Times the load of a column supported at both ends: MISUMI 2025, p. 1676; THK 514E, p. A15-30. */
export const columnFactor: Readonly<Record<EndFixity, number>> = {
  'fixed-free': 0.25,
  supported: 1,
  'fixed-supported': 2,
  fixed: 4,
};

/** Speed, rev/s, that a screw may turn before it bows out: 0.8 of its own bending frequency. Root diameter, length between bearings. */
export const screwWhirlSpeed: Formula<{ rootDiameter: number; length: number; endFixity: EndFixity }> = {
  id: 'screw-whirl-speed',
  label: 'Highest speed before the screw whips',
  equation: 'speed = 0.8 × λ² ÷ (2π × length²) × √(E × I ÷ (ρ × A)), λ by endFixity, I and A of rootDiameter',
  tex: 'n = 0.8\\,\\frac{\\lambda^2}{2\\pi L^2}\\sqrt{\\frac{E I}{\\rho A}}',
  inputs: { rootDiameter: 'm', length: 'm', endFixity: 'case' },
  unit: 'rev/s',
  source: { ref: 'MISUMI Economy catalogue 2022, ball screws', at: 'p. 991, permissible rotational speed' },
  valid: {},
  compute: ({ rootDiameter, length, endFixity }) => {
    const stiffnessOverMass =
      (steel.modulus * roundSection(rootDiameter)) / (steel.density * roundArea(rootDiameter));
    return ((0.8 * whirlRoot[endFixity] ** 2) / (2 * Math.PI * length ** 2)) * Math.sqrt(stiffnessOverMass);
  },
};

/** Push, N, that a screw may take before it bends sideways: half of Euler's load. Root diameter, length from nut to fixed bearing. */
export const screwBucklingLoad: Formula<{ rootDiameter: number; length: number; endFixity: EndFixity }> = {
  id: 'screw-buckling-load',
  label: 'Highest push before the screw buckles',
  equation: 'force = 0.5 × n × π² × E × I ÷ length², n by endFixity, I of rootDiameter',
  tex: 'P = 0.5\\,\\frac{n\\,\\pi^2 E I}{L^2}',
  inputs: { rootDiameter: 'm', length: 'm', endFixity: 'case' },
  unit: 'N',
  source: {
    ref: 'MISUMI mechanical components catalogue 2025, ball screws',
    at: 'p. 1676, permissible axial load',
  },
  valid: {},
  compute: ({ rootDiameter, length, endFixity }) =>
    (0.5 * columnFactor[endFixity] * Math.PI ** 2 * steel.modulus * roundSection(rootDiameter)) / length ** 2,
};

/** Push or pull, N, that the steel of a short screw may take: 147 MPa on the root. Governs where buckling allows more. */
export const screwShortLimit: Formula<{ rootDiameter: number }> = {
  id: 'screw-short-limit',
  label: 'Highest push on a short screw',
  equation: 'force = 147 MPa × π ÷ 4 × rootDiameter²',
  tex: 'P_2 = \\sigma\\,\\frac{\\pi}{4}\\,d_r^2',
  inputs: { rootDiameter: 'm' },
  unit: 'N',
  source: { ref: 'THK general catalogue 514E, ball screws', at: 'p. A15-30, equation (6)' },
  valid: {},
  compute: ({ rootDiameter }) => 147e6 * roundArea(rootDiameter),
};

/** Speed, rev/s, at which the balls run round as fast as the nut allows: `dn` is ball circle in mm times turns a minute. */
export const screwSpeedLimit: Formula<{ ballCircle: number; dn: number }> = {
  id: 'screw-speed-limit',
  label: 'Highest speed of the ball nut',
  equation: 'speed = dn ÷ (1000 × ballCircle) ÷ 60',
  tex: 'n = \\frac{dn}{d_m}',
  inputs: { ballCircle: 'm', dn: 'mm·rpm' },
  unit: 'rev/s',
  source: { ref: 'Denso SMT7 manual, ball screws', at: 'p. 15: 70,000 ground and grade 7, 50,000 grade 10' },
  valid: { dn: [50000, 70000] },
  compute: ({ ballCircle, dn }) => dn / (1000 * ballCircle) / 60,
};

export const screwLimitFormulas = [
  screwWhirlSpeed,
  screwBucklingLoad,
  screwShortLimit,
  screwSpeedLimit,
] as const;
