import type { Formula } from '../core/formula.ts';
import { beltFormulas } from './belt.ts';
import { inertiaFormulas } from './inertia.ts';
import { lashFormulas } from './lash.ts';
import { motionFormulas } from './motion.ts';
import { motorFormulas } from './motor.ts';
import { screwDriveFormulas } from './screw-drive.ts';
import { screwLifeFormulas } from './screw-life.ts';
import { screwLimitFormulas } from './screw-limits.ts';
import { screwShapeFormulas } from './screw-shape.ts';
import { slideFormulas } from './slide.ts';
import { slidingScrewFormulas } from './sliding-screw.ts';
import { encoderEdgeRate } from './spindle.ts';
import { stepperFormulas } from './stepper.ts';
import { inputCurrent } from './supply.ts';

/** A formula whatever its inputs: what lists, method page and explanations read. */
// biome-ignore lint/suspicious/noExplicitAny: formulas of every shape stand side by side here.
export type AnyFormula = Formula<any, any>;

/** Every formula of the product, by topic. */
export const formulas: readonly AnyFormula[] = [
  encoderEdgeRate,
  inputCurrent,
  ...screwDriveFormulas,
  ...screwLimitFormulas,
  ...screwLifeFormulas,
  ...screwShapeFormulas,
  ...slidingScrewFormulas,
  ...beltFormulas,
  ...slideFormulas,
  ...motionFormulas,
  ...inertiaFormulas,
  ...motorFormulas,
  ...stepperFormulas,
  ...lashFormulas,
];
