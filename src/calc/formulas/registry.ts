import type { Formula } from '../core/formula.ts';
import { ampacityFormulas } from './ampacity.ts';
import { bandFormulas } from './bands.ts';
import { beltFormulas } from './belt.ts';
import { buyingFormulas } from './buying.ts';
import { chuckFormulas } from './chuck.ts';
import { cuttingFormulas } from './cutting.ts';
import { drillingFormulas } from './drilling.ts';
import { carbideDrillingFormulas } from './drilling-carbide.ts';
import { handbookDrillingFormulas } from './drilling-handbook.ts';
import { heatFormulas } from './heat.ts';
import { inertiaFormulas } from './inertia.ts';
import { lashFormulas } from './lash.ts';
import { leakageFormulas } from './leakage.ts';
import { motionFormulas } from './motion.ts';
import { motorFormulas } from './motor.ts';
import { planningFormulas } from './planning.ts';
import { priceFormulas } from './prices.ts';
import { reachFormulas } from './reach.ts';
import { screwDriveFormulas } from './screw-drive.ts';
import { screwLifeFormulas } from './screw-life.ts';
import { screwLimitFormulas } from './screw-limits.ts';
import { screwShapeFormulas } from './screw-shape.ts';
import { sharingFormulas } from './sharing.ts';
import { slideFormulas } from './slide.ts';
import { slidingScrewFormulas } from './sliding-screw.ts';
import { spindleFormulas } from './spindle.ts';
import { spindleDriveFormulas } from './spindle-drive.ts';
import { spindleStopFormulas } from './spindle-stop.ts';
import { statisticsFormulas } from './statistics.ts';
import { stepperFormulas } from './stepper.ts';
import { supplyFormulas } from './supply.ts';
import { threadFormulas } from './thread.ts';
import { threadErrorFormulas } from './thread-error.ts';
import { threadRatioFormulas } from './thread-ratio.ts';
import { toolForceFormulas } from './tool-forces.ts';
import { wireFormulas } from './wire.ts';
import { worthFormulas } from './worth.ts';

/** A formula whatever its inputs: what lists, method page and explanations read. */
// biome-ignore lint/suspicious/noExplicitAny: formulas of every shape stand side by side here.
export type AnyFormula = Formula<any, any>;

/** Every formula of the product, by topic. */
export const formulas: readonly AnyFormula[] = [
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
  ...cuttingFormulas,
  ...toolForceFormulas,
  ...drillingFormulas,
  ...handbookDrillingFormulas,
  ...carbideDrillingFormulas,
  ...spindleFormulas,
  ...spindleDriveFormulas,
  ...spindleStopFormulas,
  ...chuckFormulas,
  ...threadFormulas,
  ...threadErrorFormulas,
  ...threadRatioFormulas,
  ...reachFormulas,
  ...supplyFormulas,
  ...leakageFormulas,
  ...wireFormulas,
  ...ampacityFormulas,
  ...heatFormulas,
  ...bandFormulas,
  ...statisticsFormulas,
  ...sharingFormulas,
  ...priceFormulas,
  ...buyingFormulas,
  ...worthFormulas,
  ...planningFormulas,
];

const byId = new Map(formulas.map((formula) => [formula.id, formula]));

/** The formula of that id; throws on an unknown one, an author's mistake. */
export function formulaById(id: string): AnyFormula {
  const formula = byId.get(id);
  if (!formula) throw new Error(`no formula has the id ${id}`);
  return formula;
}
