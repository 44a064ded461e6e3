import { pertMean as meanOfPert } from '../core/band.ts';
import type { Formula } from '../core/formula.ts';
import { criticalPath } from './critical-path.ts';

const taylor = 'Taylor, Introduction to Management Science';

/** Time to plan with from a quick, a likely and a slow guess, seconds. */
export const pertMean: Formula<{ low: number; likely: number; high: number }> = {
  id: 'pert-mean',
  label: 'Time to plan with',
  equation: 'mean = (low + 4 × likely + high) ÷ 6',
  tex: 't_e = \\frac{a + 4m + b}{6}',
  inputs: { low: 's', likely: 's', high: 's' },
  unit: 's',
  source: { ref: taylor, at: 'ch. 8, probabilistic activity times' },
  valid: {},
  compute: ({ low, likely, high }) => meanOfPert([low, likely, high]),
};

/** Standard normal distribution function, absolute error under 1e-14 for |z| up to 6. Marsaglia, J. Stat. Software 11(4), 2004. */
function normalShare(z: number): number {
  if (Math.abs(z) > 8) return z > 0 ? 1 : 0;
  let term = z;
  let sum = z;
  for (let n = 3; n < 300; n += 2) {
    term *= (z * z) / n;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}

/**
 * Chance (0 to 1) that a chain of activities is over by a deadline, all in seconds. Only for that one
 * chain: where several meet, the whole plan is later than this says.
 */
export const pathProbability: Formula<{
  means: readonly number[];
  deviations: readonly number[];
  deadline: number;
}> = {
  id: 'path-probability',
  label: 'Chance to finish a chain of work in time',
  equation: 'chance = Φ((deadline − Σ means) ÷ √(Σ deviations²))',
  tex: 'P = \\Phi\\!\\left(\\frac{T - \\sum t_e}{\\sqrt{\\sum \\sigma^2}}\\right)',
  inputs: { means: 's', deviations: 's', deadline: 's' },
  unit: '1',
  source: { ref: taylor, at: 'ch. 8, probability analysis of the project network' },
  valid: {},
  compute: ({ means, deviations, deadline }) => {
    const spare = deadline - add(means);
    const deviation = Math.hypot(...deviations);
    return deviation === 0 ? Number(spare >= 0) : normalShare(spare / deviation);
  },
};

const add = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

interface Learning {
  readonly first: number;
  readonly rate: number;
  readonly n: number;
}
type LearningInputs = { [K in keyof Learning]: Learning[K] };

/** Seconds for the n-th piece, when every doubling takes `rate` (0.8: 80 %) of the time. Unit model. */
export const learningTime: Formula<LearningInputs> = {
  id: 'learning-time',
  label: 'Time for the n-th piece',
  equation: 'time = first × n ^ (log rate ÷ log 2)',
  tex: 'T_n = T_1\\,n^{\\log r / \\log 2}',
  inputs: { first: 's', rate: '1', n: '1' },
  unit: 's',
  source: { ref: 'Learning curve, unit model (Crawford)', at: 'as in operations management texts' },
  valid: { rate: [0.5, 1], n: [1, 10000] },
  compute: ({ first, rate, n }) => first * n ** Math.log2(rate),
};

/** Seconds for the first n pieces together, n whole. Unit model: every piece by its own time, added. */
export const learningTotal: Formula<LearningInputs> = {
  id: 'learning-total',
  label: 'Time for the first n pieces',
  equation: 'total = sum of first × k ^ (log rate ÷ log 2) for k = 1 … n',
  tex: '\\sum_{k=1}^{n} T_1\\,k^{\\log r / \\log 2}',
  inputs: learningTime.inputs,
  unit: 's',
  source: learningTime.source,
  valid: learningTime.valid,
  compute: ({ first, rate, n }) => {
    if (!Number.isFinite(n)) return Number.NaN;
    let total = 0;
    for (let piece = 1; piece <= n; piece += 1) total += learningTime.compute({ first, rate, n: piece });
    return total;
  },
};

export const planningFormulas = [
  pertMean,
  criticalPath,
  pathProbability,
  learningTime,
  learningTotal,
] as const;
