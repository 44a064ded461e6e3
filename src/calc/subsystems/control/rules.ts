import type { Rule } from '../../core/rule.ts';
import { handRules } from './rules-hands.ts';
import { kindRules } from './rules-kinds.ts';
import { sharingRules } from './rules-sharing.ts';

export const rules: readonly Rule[] = [...kindRules, ...handRules, ...sharingRules];
