import type { Decision } from '../../core/decision.ts';
import { apronDecisions } from './decisions-apron.ts';
import { driveDecisions } from './decisions-drive.ts';
import { endDecisions } from './decisions-ends.ts';

/** Questions about the carriage, in the order in which each sees what limits it. */
export const decisions: readonly Decision[] = [...driveDecisions, ...endDecisions, ...apronDecisions];
