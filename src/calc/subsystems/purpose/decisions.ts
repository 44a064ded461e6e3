import type { Decision } from '../../core/decision.ts';
import { machineDecisions } from './decisions-machine.ts';
import { mainsDecisions } from './decisions-mains.ts';
import { materialDecisions } from './decisions-materials.ts';
import { useDecisions } from './decisions-use.ts';
import { whyDecisions } from './decisions-why.ts';

export const decisions: readonly Decision[] = [
  ...mainsDecisions,
  ...machineDecisions,
  ...whyDecisions,
  ...materialDecisions,
  ...useDecisions,
];
