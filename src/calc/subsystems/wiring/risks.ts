import type { Risk } from '../../core/risk.ts';
import { electricRisks } from './risks-electric.ts';
import { peopleRisks } from './risks-people.ts';

export const risks: readonly Risk[] = [...electricRisks, ...peopleRisks];
