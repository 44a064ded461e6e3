import { beltRows } from './belt.ts';
import { cuttingRows } from './cutting.ts';
import { cuttingForceRows } from './cutting-force.ts';
import { drillingRows } from './drilling.ts';
import { inertiaRows } from './inertia.ts';
import { motionRows } from './motion.ts';
import { planningRows } from './planning.ts';
import { buyingRows, priceRows } from './prices.ts';
import type { PublishedRow } from './row.ts';
import { screwDriveRows } from './screw-drive.ts';
import { screwLifeRows } from './screw-life.ts';
import { screwLimitRows } from './screw-limits.ts';
import { sharingRows } from './sharing.ts';
import { slideRows } from './slide.ts';
import { slidingScrewRows } from './sliding-screw.ts';
import { spindleRows } from './spindle.ts';
import { spindleTorqueRows } from './spindle-torque.ts';
import { statisticsRows } from './statistics.ts';
import { stepperRows } from './stepper.ts';
import { heatRows, supplyRows } from './supply.ts';
import { threadRows } from './thread.ts';
import { wireRows } from './wire.ts';
import { worthRows } from './worth.ts';

/** Every published row, by topic. */
export const rows: readonly PublishedRow[] = [
  ...spindleRows,
  ...screwDriveRows,
  ...screwLimitRows,
  ...screwLifeRows,
  ...slidingScrewRows,
  ...beltRows,
  ...slideRows,
  ...motionRows,
  ...inertiaRows,
  ...stepperRows,
  ...cuttingRows,
  ...cuttingForceRows,
  ...drillingRows,
  ...spindleTorqueRows,
  ...threadRows,
  ...wireRows,
  ...supplyRows,
  ...heatRows,
  ...statisticsRows,
  ...sharingRows,
  ...priceRows,
  ...buyingRows,
  ...worthRows,
  ...planningRows,
];
