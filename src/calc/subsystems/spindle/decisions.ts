import type { Decision } from '../../core/decision.ts';
import { motorDecisions } from './decisions-motor.ts';
import { sensorDecisions } from './decisions-sensor.ts';

/** Questions about what turns the work and how the control knows its angle, in guide order. */
export const decisions: readonly Decision[] = [...motorDecisions, ...sensorDecisions];
