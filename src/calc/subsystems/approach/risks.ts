import type { Risk } from '../../core/risk.ts';
import { projectRisks } from './risks-project.ts';
import { supplyRisks } from './risks-supply.ts';

export const risks: readonly Risk[] = [...supplyRisks, ...projectRisks];
