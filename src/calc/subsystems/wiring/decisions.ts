import type { Decision } from '../../core/decision.ts';
import { careDecisions } from './decisions-care.ts';
import { houseDecisions } from './decisions-house.ts';
import { senseDecisions } from './decisions-sense.ts';
import { stopDecisions } from './decisions-stop.ts';

export const decisions: readonly Decision[] = [
  ...stopDecisions,
  ...senseDecisions,
  ...houseDecisions,
  ...careDecisions,
];
