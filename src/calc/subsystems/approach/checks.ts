import type { CheckRule } from '../../core/check.ts';

export const checks: readonly CheckRule[] = [];
