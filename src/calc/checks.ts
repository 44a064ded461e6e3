import type { Check } from './core/check.ts';
import type { Look } from './core/figure.ts';
import { checkRules } from './trade.ts';

/** Every check that arises on this path, in order of the rooms. */
export const checksOf = (look: Look): Check[] => checkRules.flatMap((rule) => rule(look) ?? []);
