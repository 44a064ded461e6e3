import type { Figure, Look } from '../../core/figure.ts';
import { derive } from '../../core/formula.ts';
import type { Quantity } from '../../core/quantity.ts';
import { largestOf, productOf } from '../../core/steps.ts';
import { threadRoundingError, threadStepRatio } from '../../formulas/thread-ratio.ts';
import { cutsThreads } from '../spindle/design-thread.ts';
import { beat, countLimit, pulseLimit } from './limits.ts';

/** The faster of the driven slides. */
function fastestPulses(look: Look): Quantity | undefined {
  const carriage = look.figure('carriage-pulse-rate');
  const cross = look.figure('cross-pulse-rate');
  return largestOf({ ...(carriage ? { carriage } : {}), ...(cross ? { cross } : {}) });
}

/** Pulses for one turn of the carriage screw, belt included. */
const stepsPerTurn = (look: Look): Quantity | undefined =>
  productOf('1', {
    steps: look.figure('carriage-steps-per-length'),
    lead: look.figure('carriage-lead'),
  });

const ratio = (pick: 'steps' | 'turns') => (look: Look) =>
  cutsThreads(look)
    ? derive(
        threadStepRatio,
        {
          stepsPerTurn: stepsPerTurn(look),
          pitch: look.fact('coarsest-thread'),
          lead: look.figure('carriage-lead'),
        },
        (out) => out[pick],
      )
    : undefined;

/** What the control has to send and count, and what it can. */
export const figures: readonly Figure[] = [
  { id: 'control-pulse-limit', label: 'Fastest step pulses of the control', of: pulseLimit },
  { id: 'control-count-limit', label: 'Fastest counting of the control', of: countLimit },
  { id: 'control-beat', label: 'Beat in which the PC sets its step lines', of: beat },
  { id: 'pulse-rate', label: 'Step pulses a second in the faster rapid move', of: fastestPulses },
  {
    id: 'thread-ratio-steps',
    label: 'Exact ratio for the coarsest thread: pulses …',
    of: ratio('steps'),
  },
  {
    id: 'thread-ratio-turns',
    label: '… in so many turns of the spindle',
    of: ratio('turns'),
  },
  {
    id: 'thread-rounding-error',
    label: 'Drift over a thread if the pulses for a turn were rounded',
    of: (look) =>
      derive(threadRoundingError, {
        steps: look.figure('thread-ratio-steps'),
        turns: look.figure('thread-ratio-turns'),
        length: look.fact('thread-length'),
      }),
  },
];
