import type { Decision } from '../../core/decision.ts';
import { toolDecisions } from './decisions-tools.ts';
import { workDecisions } from './decisions-work.ts';

/** Tools first, then the work and its holes, then how the tools are measured. */
export const decisions: readonly Decision[] = [
  toolDecisions.holding,
  workDecisions.holding,
  workDecisions.barFeed,
  workDecisions.holes,
  toolDecisions.offsets,
];
