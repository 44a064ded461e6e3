import { pertMean as meanOfPert } from '../core/band.ts';
import type { Formula } from '../core/formula.ts';
import { betaQuantile } from './beta.ts';

/** How the figures between low and high are spread: straight flanks, or the smooth bump of a PERT estimate. */
export type BandShape = 'triangular' | 'pert';

interface ShapedBand {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly shape: BandShape;
}
type BandInputs = { [K in keyof ShapedBand]: ShapedBand[K] };

const bandInputs = { low: '1', likely: '1', high: '1', shape: 'case' } as const;

const inOrder = ({ low, likely, high }: Omit<ShapedBand, 'shape'>): boolean =>
  low <= likely && likely <= high;

/** Mean of a low, likely and high figure, in their unit; NaN where they are out of order. */
export const bandMean: Formula<BandInputs> = {
  id: 'band-mean',
  label: 'Mean of low, likely and high',
  equation: 'triangular: (low + likely + high) ÷ 3; PERT: (low + 4 × likely + high) ÷ 6',
  tex: '\\mu = \\frac{a + m + b}{3} \\quad\\text{or}\\quad \\frac{a + 4m + b}{6}',
  inputs: bandInputs,
  unit: '1',
  source: { ref: 'Taylor, Introduction to Management Science', at: 'ch. 8; triangular: standard texts' },
  valid: {},
  compute: ({ low, likely, high, shape }) => {
    if (!inOrder({ low, likely, high })) return Number.NaN;
    return shape === 'pert' ? meanOfPert([low, likely, high]) : (low + likely + high) / 3;
  },
};

/**
 * Variance of a low, likely and high figure, in their unit squared. For PERT the usual ((high − low) ÷ 6)², a few
 * per cent from that of the smooth curve itself.
 */
export const bandVariance: Formula<BandInputs> = {
  id: 'band-variance',
  label: 'Spread of low, likely and high (variance)',
  equation: 'triangular: ((high − low)² + (likely − low)(likely − high)) ÷ 18; PERT: ((high − low) ÷ 6)²',
  tex: '\\sigma^2 = \\frac{(b-a)^2 + (m-a)(m-b)}{18} \\quad\\text{or}\\quad \\left(\\frac{b-a}{6}\\right)^2',
  inputs: bandInputs,
  unit: '1',
  source: { ref: 'Taylor, Introduction to Management Science', at: 'ch. 8; triangular: standard texts' },
  valid: {},
  compute: ({ low, likely, high, shape }) => {
    if (!inOrder({ low, likely, high })) return Number.NaN;
    if (shape === 'pert') return ((high - low) / 6) ** 2;
    return ((high - low) ** 2 + (likely - low) * (likely - high)) / 18;
  },
};

function triangularAt(p: number, low: number, likely: number, high: number): number {
  const width = high - low;
  const up = likely - low;
  if (p * width < up) return low + Math.sqrt(p * width * up);
  return high - Math.sqrt((1 - p) * width * (high - likely));
}

/** Beta shapes 1 + 4 × place of the likely figure, counted from either end. */
function pertAt(p: number, low: number, likely: number, high: number): number {
  const place = (likely - low) / (high - low);
  return low + (high - low) * betaQuantile(p, 1 + 4 * place, 5 - 4 * place);
}

/** The figure that a share p (0 to 1) of outcomes stays below, in the unit of the band. */
export const bandQuantile: Formula<BandInputs & { p: number }> = {
  id: 'band-quantile',
  label: 'Figure that a share of outcomes stays below',
  equation:
    'share p of the triangle, or of the beta curve with a = 1 + 4 (likely − low) ÷ (high − low), b = 6 − a',
  tex: 'x_p = F^{-1}(p)',
  inputs: { ...bandInputs, p: '1' },
  unit: '1',
  source: { ref: 'Standard texts', at: 'triangular and beta distribution; PERT weight 4' },
  valid: { p: [0, 1] },
  compute: ({ low, likely, high, shape, p }) => {
    if (!inOrder({ low, likely, high }) || !(p >= 0 && p <= 1)) return Number.NaN;
    if (high === low || p === 0) return low;
    if (p === 1) return high;
    return shape === 'pert' ? pertAt(p, low, likely, high) : triangularAt(p, low, likely, high);
  },
};

/** Sum and variance of the sum, in the bands' unit and its square. */
export interface BandSum {
  readonly mean: number;
  readonly variance: number;
}

/**
 * Mean and variance of a sum of bands, each pair with the same correlation: 0 apart, 1 all rise and fall together.
 * Lists of one length.
 */
export const sumOfBands: Formula<
  {
    lows: readonly number[];
    likelies: readonly number[];
    highs: readonly number[];
    shape: BandShape;
    correlation: number;
  },
  BandSum
> = {
  id: 'sum-of-bands',
  label: 'Sum of several bands',
  equation: 'mean = Σ means; variance = (1 − correlation) × Σ variances + correlation × (Σ deviations)²',
  tex: '\\mu = \\sum\\mu_i,\\quad \\sigma^2 = (1-\\rho)\\sum\\sigma_i^2 + \\rho\\left(\\sum\\sigma_i\\right)^2',
  inputs: { lows: '1', likelies: '1', highs: '1', shape: 'case', correlation: '1' },
  unit: '1',
  source: { ref: 'Book, Why correlation matters in cost estimating, 1999', at: 'variance of a sum' },
  valid: { correlation: [0, 1] },
  compute: ({ lows, likelies, highs, shape, correlation }) => {
    const bands = lows.map((low, at) => ({ low, likely: likelies[at]!, high: highs[at]!, shape }));
    const variances = bands.map(bandVariance.compute);
    const deviations = add(variances.map(Math.sqrt));
    return {
      mean: add(bands.map(bandMean.compute)),
      variance: (1 - correlation) * add(variances) + correlation * deviations ** 2,
    };
  },
};

const add = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

export const bandFormulas = [bandMean, bandVariance, bandQuantile, sumOfBands] as const;
