import type { Formula } from '../core/formula.ts';

const HANDBOOK = 'Machinery’s Handbook, 31st edition';

/** Width of the drill's web against its diameter: split point, 0.10, the ordinary 0.18, 0.25. */
export type DrillWeb = 'split' | 'thin' | 'ordinary' | 'thick';

/** Chisel-edge factors A (torque), B and J (thrust) of the handbook, p. 1152. */
const chiselFactors: Readonly<Record<DrillWeb, { a: number; b: number; j: number }>> = {
  split: { a: 1, b: 1.1, j: 0.001 },
  thin: { a: 1.02, b: 1.235, j: 0.01 },
  ordinary: { a: 1.085, b: 1.355, j: 0.03 },
  thick: { a: 1.155, b: 1.445, j: 0.065 },
};
const unknown = { a: Number.NaN, b: Number.NaN, j: Number.NaN };

type Drill = { diameter: number; feed: number; workFactor: number; web: DrillWeb; wear: number };

const inputs = { diameter: 'm', feed: 'm/rev', workFactor: '1', web: 'case', wear: '1' } as const;
const valid = { wear: [1, 1.5] } as const;

/**
 * Thrust of a high-speed-steel twist drill by the handbook, N, in its metric form with rounded constants. Diameter
 * in m, feed in m/rev, work factor Kd of the handbook's own table, wear 1 for sharp and 1.3 for normal wear.
 */
export const drillThrustHandbook: Formula<Drill> = {
  id: 'drill-thrust-handbook',
  label: 'Thrust of a twist drill, handbook method',
  equation:
    'thrust = work factor × wear × (0.05 × B(web) × feed^0.8 × diameter^0.8 + 0.007 × J(web) × diameter²), in mm',
  tex: 'T = 0.05\\,K_d\\,f^{0.8} D^{0.8} B\\,W + 0.007\\,K_d\\,D^2 J\\,W',
  inputs,
  unit: 'N',
  source: { ref: HANDBOOK, at: 'p. 1152-1153, thrust, tables 7 to 9' },
  valid,
  compute: ({ diameter, feed, workFactor, web, wear }) => {
    const { b, j } = chiselFactors[web] ?? unknown;
    const [width, bite] = [1000 * diameter, 1000 * feed];
    return workFactor * wear * (0.05 * bite ** 0.8 * width ** 0.8 * b + 0.007 * width ** 2 * j);
  },
};

/** Torque of a high-speed-steel twist drill by the handbook, N·m; inputs as `drillThrustHandbook`. */
export const drillTorqueHandbook: Formula<Drill> = {
  id: 'drill-torque-handbook',
  label: 'Torque of a twist drill, handbook method',
  equation: 'torque = work factor × wear × A(web) × feed^0.8 × diameter^1.8 ÷ 40,000, in mm',
  tex: 'M = \\frac{K_d\\,f^{0.8} D^{1.8} A\\,W}{40\\,000}',
  inputs,
  unit: 'N·m',
  source: { ref: HANDBOOK, at: 'p. 1152-1153, torque, tables 7 to 9' },
  valid,
  compute: ({ diameter, feed, workFactor, web, wear }) => {
    const { a } = chiselFactors[web] ?? unknown;
    return (workFactor * wear * a * (1000 * feed) ** 0.8 * (1000 * diameter) ** 1.8) / 40000;
  },
};

export const handbookDrillingFormulas = [drillThrustHandbook, drillTorqueHandbook] as const;
