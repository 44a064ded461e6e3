import { compile, type State } from '../choices/state.ts';
import { type Condition, is } from '../core/condition.ts';

/**
 * Hours of somebody who has done such work, as a share of a first-timer's. Three quarters: the ratio of the trade's old
 * hours to those of a first-timer for drawings, brackets and the spindle motor (12 of 16, 8 of 11, 7 of 9, 6 of 8).
 * Three fifths: that, and the second of its kind on a learning curve of 80 %. Judgement, no source.
 */
const levels = [
  { when: is('experience', 'built-machines-before'), by: 0.75 },
  { when: is('experience', 'converted-before'), by: 0.6 },
];

const shares = levels.map(({ when, by }) => ({ when: compile(when), by }));

/** What the hours of every task look at. */
export const practiceConditions: readonly Condition[] = levels.map(({ when }) => when);

/** What every hour of work is multiplied by; troubles are not. */
export const practice = (state: State): number => shares.find(({ when }) => when(state))?.by ?? 1;
