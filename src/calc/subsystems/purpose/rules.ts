import type { Rule } from '../../core/rule.ts';
import { useRules } from './rules-use.ts';
import { verdictRules } from './rules-verdicts.ts';

export const rules: readonly Rule[] = [...verdictRules, ...useRules];
