import type { Decision } from '../../core/decision.ts';
import { compoundDecisions } from './decisions-compound.ts';
import { holdDecisions } from './decisions-hold.ts';
import { powerOffHold } from './decisions-power-off.ts';
import { screwDecisions } from './decisions-screw.ts';

/** Questions about the slide that moves the tool in and out, in guide order. */
export const decisions: readonly Decision[] = [
  ...screwDecisions,
  ...holdDecisions,
  powerOffHold,
  ...compoundDecisions,
];
