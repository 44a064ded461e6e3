import type { Risk } from '../../core/risk.ts';
import { buyingRisks } from './risks-buying.ts';
import { useRisks } from './risks-use.ts';

export const risks: readonly Risk[] = [...buyingRisks, ...useRisks];
