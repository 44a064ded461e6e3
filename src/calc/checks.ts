import type { Look } from './core/figure.ts';
import type { PlacedCheck } from './report.ts';
import { checkRules } from './trade.ts';

/** Every check that arises on this path, in order of the rooms. */
export const checksOf = (look: Look): PlacedCheck[] =>
  checkRules.flatMap(({ subsystem, rule }) => {
    const check = rule(look);
    return check ? [{ ...check, subsystem }] : [];
  });
