import type { CheckRule } from '../../core/check.ts';
import { homeChecks } from './checks-home.ts';
import { reachChecks } from './checks-reach.ts';

export const checks: readonly CheckRule[] = [...reachChecks, ...homeChecks];
