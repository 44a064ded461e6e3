import type { Decision } from '../../core/decision.ts';
import { driveDecisions } from './decisions-drives.ts';
import { motorDecisions } from './decisions-motors.ts';

export const decisions: readonly Decision[] = [...motorDecisions, ...driveDecisions];
