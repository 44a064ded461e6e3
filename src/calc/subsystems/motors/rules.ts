import type { Rule } from '../../core/rule.ts';
import { orderRules } from './rules-order.ts';
import { supplyRules } from './rules-supply.ts';
import { thrustRules } from './rules-thrust.ts';

export const rules: readonly Rule[] = [...thrustRules, ...supplyRules, ...orderRules];
