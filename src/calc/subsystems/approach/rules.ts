import type { Rule } from '../../core/rule.ts';
import { bracketRules } from './rules-brackets.ts';
import { orderRules } from './rules-order.ts';

export const rules: readonly Rule[] = [...orderRules, ...bracketRules];
