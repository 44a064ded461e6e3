import type { Formula } from '../core/formula.ts';

/** So many pulses in so many whole turns of the spindle, both whole numbers without a common divisor. */
export interface StepRatio {
  readonly steps: number;
  readonly turns: number;
}

const none: StepRatio = { steps: Number.NaN, turns: Number.NaN };
const TENTH_OF_A_MICROMETRE = 1e7;
const LARGEST_DIVISOR = 127;

type Fraction = readonly [over: bigint, under: bigint];

/** A figure as a fraction with a small divisor; undefined where none fits. Eleven to the inch needs one of 11. */
function fractionOf(figure: number): Fraction | undefined {
  for (let under = 1; under <= LARGEST_DIVISOR; under += 1) {
    const over = Math.round(figure * under);
    if (over > 0 && Math.abs(figure * under - over) < 1e-6 * under) return [BigInt(over), BigInt(under)];
  }
  return undefined;
}

const commonDivisor = (a: bigint, b: bigint): bigint => (b === 0n ? a : commonDivisor(b, a % b));

/**
 * Pulses of the carriage motor for whole turns of the spindle, held as two whole numbers so that no thread drifts.
 * `stepsPerTurn` is pulses for one turn of the carriage screw; pitch and lead in m, taken to a tenth of a micrometre.
 * Both NaN where a figure is no small fraction.
 */
export const threadStepRatio: Formula<{ stepsPerTurn: number; pitch: number; lead: number }, StepRatio> = {
  id: 'thread-step-ratio',
  label: 'Exact pulses for whole turns of the spindle',
  equation: 'steps ÷ turns = stepsPerTurn × pitch ÷ lead, in whole numbers',
  tex: '\\frac{n}{k} = N\\,\\frac{P}{l}, \\quad n, k \\in \\mathbb{N}',
  inputs: { stepsPerTurn: '1', pitch: 'm', lead: 'm' },
  unit: '1',
  source: { ref: 'plain arithmetic', at: 'an inch is exactly 25.4 mm, hence the 127' },
  valid: {},
  unverified: 'Arithmetic of whole numbers; no published worked ratio is known.',
  compute: ({ stepsPerTurn, pitch, lead }) => {
    const turn = fractionOf(stepsPerTurn);
    const thread = fractionOf(pitch * TENTH_OF_A_MICROMETRE);
    const screw = fractionOf(lead * TENTH_OF_A_MICROMETRE);
    if (!turn || !thread || !screw) return none;
    const steps = turn[0] * thread[0] * screw[1];
    const turns = turn[1] * thread[1] * screw[0];
    const divisor = commonDivisor(steps, turns);
    return { steps: Number(steps / divisor), turns: Number(turns / divisor) };
  },
};

/** How far a thread of a length (m) drifts, m, when the pulses for one turn are rounded to a whole number. */
export const threadRoundingError: Formula<{ steps: number; turns: number; length: number }> = {
  id: 'thread-rounding-error',
  label: 'Drift of a thread from rounded pulses',
  equation: 'error = length × |round(steps ÷ turns) − steps ÷ turns| ÷ (steps ÷ turns)',
  tex: 'e = L\\,\\frac{\\left|[q] - q\\right|}{q}, \\quad q = \\frac{n}{k}',
  inputs: { steps: '1', turns: '1', length: 'm' },
  unit: 'm',
  source: { ref: 'plain arithmetic', at: 'the same small error in every turn' },
  valid: {},
  unverified: 'Arithmetic of a rounded ratio; no published worked figure is known.',
  compute: ({ steps, turns, length }) => {
    const exact = steps / turns;
    return (length * Math.abs(Math.round(exact) - exact)) / exact;
  },
};

export const threadRatioFormulas = [threadStepRatio, threadRoundingError] as const;
