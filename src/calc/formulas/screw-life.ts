import type { Formula } from '../core/formula.ts';
import { sum } from './constants.ts';

const catalogue = 'MISUMI mechanical components catalogue 2025, ball screws';

/** Turns, rev, that nine ball screws of ten outlast. `loadFactor` 1 smooth to 2 with shocks. ISO 3408-5. */
export const screwLifeRevolutions: Formula<{
  dynamicRating: number;
  meanForce: number;
  loadFactor: number;
}> = {
  id: 'screw-life-revolutions',
  label: 'Turns that nine screws of ten outlast',
  equation: 'life = (dynamicRating ÷ (loadFactor × meanForce))³ × 10⁶',
  tex: 'L_{10} = \\left(\\frac{C_a}{f_w F_m}\\right)^3 10^6',
  inputs: { dynamicRating: 'N', meanForce: 'N', loadFactor: '1' },
  unit: 'rev',
  source: { ref: catalogue, at: 'p. 1678, life' },
  valid: { loadFactor: [1, 2] },
  compute: ({ dynamicRating, meanForce, loadFactor }) =>
    (dynamicRating / (loadFactor * meanForce)) ** 3 * 1e6,
};

/** The same life in hours at a mean speed in rev/s. */
export const screwLifeHours: Formula<{
  dynamicRating: number;
  meanForce: number;
  loadFactor: number;
  speed: number;
}> = {
  id: 'screw-life-hours',
  label: 'Hours that nine screws of ten outlast',
  equation: 'hours = (dynamicRating ÷ (loadFactor × meanForce))³ × 10⁶ ÷ (3600 × speed)',
  tex: 'L_h = \\left(\\frac{C_a}{f_w F_m}\\right)^3 \\frac{10^6}{3600\\,n}',
  inputs: { dynamicRating: 'N', meanForce: 'N', loadFactor: '1', speed: 'rev/s' },
  unit: 'h',
  source: { ref: catalogue, at: 'p. 1678, life' },
  valid: { loadFactor: [1, 2] },
  compute: ({ speed, ...load }) => screwLifeRevolutions.compute(load) / (3600 * speed),
};

/** Three lists of one length: one entry for each phase of the work, with its share of the time. */
type Phases = { forces: readonly number[]; speeds: readonly number[]; shares: readonly number[] };

const turns = ({ speeds, shares }: Phases): number[] => speeds.map((speed, at) => speed * shares[at]!);

/** The one steady force, N, that wears the screw as the phases do: cube-weighted over the turns. */
export const screwMeanForce: Formula<Phases> = {
  id: 'screw-mean-force',
  label: 'Force that wears the screw as the work does',
  equation: 'force = (Σ forces³ × speeds × shares ÷ Σ speeds × shares)^(1/3)',
  tex: 'F_m = \\sqrt[3]{\\frac{\\sum F_i^3 n_i t_i}{\\sum n_i t_i}}',
  inputs: { forces: 'N', speeds: 'rev/s', shares: '1' },
  unit: 'N',
  source: { ref: catalogue, at: 'p. 1678, mean axial load' },
  valid: { shares: [0, 1] },
  compute: (phases) => {
    const weights = turns(phases);
    return Math.cbrt(sum(phases.forces.map((force, at) => force ** 3 * weights[at]!)) / sum(weights));
  },
};

/** Mean speed of the screw over the phases, rev/s. */
export const screwMeanSpeed: Formula<Pick<Phases, 'speeds' | 'shares'>> = {
  id: 'screw-mean-speed',
  label: 'Mean speed of the screw',
  equation: 'speed = Σ speeds × shares ÷ Σ shares',
  tex: 'n_m = \\frac{\\sum n_i t_i}{\\sum t_i}',
  inputs: { speeds: 'rev/s', shares: '1' },
  unit: 'rev/s',
  source: { ref: catalogue, at: 'p. 1678, mean speed' },
  valid: { shares: [0, 1] },
  compute: ({ speeds, shares }) => sum(turns({ forces: [], speeds, shares })) / sum(shares),
};

export const screwLifeFormulas = [
  screwLifeRevolutions,
  screwLifeHours,
  screwMeanForce,
  screwMeanSpeed,
] as const;
