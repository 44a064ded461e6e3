import type { Decision } from '../../core/decision.ts';
import { controlDecision } from './decisions-control.ts';
import { handDecisions } from './decisions-hands.ts';
import { sharingDecision } from './decisions-sharing.ts';

export const decisions: readonly Decision[] = [controlDecision, ...handDecisions, sharingDecision];
