import type { Rule } from '../../core/rule.ts';
import { houseRules } from './rules-house.ts';
import { stopRules } from './rules-stop.ts';

export const rules: readonly Rule[] = [...stopRules, ...houseRules];
