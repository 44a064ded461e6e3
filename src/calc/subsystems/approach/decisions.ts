import type { Decision } from '../../core/decision.ts';
import { orderDecisions } from './decisions-order.ts';
import { workshopDecisions } from './decisions-workshop.ts';

export const decisions: readonly Decision[] = [...orderDecisions, ...workshopDecisions];
