import type { CheckRule } from '../../core/check.ts';
import { proofChecks } from './checks-proof.ts';
import { rateChecks } from './checks-rate.ts';

export const checks: readonly CheckRule[] = [...rateChecks, ...proofChecks];
