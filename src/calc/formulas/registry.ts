import type { Formula } from '../core/formula.ts';
import { ampacityFormulas } from './ampacity.ts';
import { bandFormulas } from './bands.ts';
import { buyingFormulas } from './buying.ts';
import { heatFormulas } from './heat.ts';
import { leakageFormulas } from './leakage.ts';
import { planningFormulas } from './planning.ts';
import { priceFormulas } from './prices.ts';
import { encoderEdgeRate } from './spindle.ts';
import { statisticsFormulas } from './statistics.ts';
import { supplyFormulas } from './supply.ts';
import { wireFormulas } from './wire.ts';
import { worthFormulas } from './worth.ts';

/** A formula whatever its inputs: what lists, method page and explanations read. */
// biome-ignore lint/suspicious/noExplicitAny: formulas of every shape stand side by side here.
export type AnyFormula = Formula<any, any>;

/** Every formula of the product, by topic. */
export const formulas: readonly AnyFormula[] = [
  encoderEdgeRate,
  ...supplyFormulas,
  ...leakageFormulas,
  ...wireFormulas,
  ...ampacityFormulas,
  ...heatFormulas,
  ...bandFormulas,
  ...statisticsFormulas,
  ...priceFormulas,
  ...buyingFormulas,
  ...worthFormulas,
  ...planningFormulas,
];
