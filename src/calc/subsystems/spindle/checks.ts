import type { CheckRule } from '../../core/check.ts';
import { cutChecks } from './checks-cut.ts';
import { speedChecks } from './checks-speed.ts';
import { stopChecks } from './checks-stop.ts';
import { threadChecks } from './checks-thread.ts';

export const checks: readonly CheckRule[] = [...speedChecks, ...cutChecks, ...stopChecks, ...threadChecks];
