import { beltRows } from './belt.ts';
import { inertiaRows } from './inertia.ts';
import { motionRows } from './motion.ts';
import type { PublishedRow } from './row.ts';
import { screwDriveRows } from './screw-drive.ts';
import { screwLifeRows } from './screw-life.ts';
import { screwLimitRows } from './screw-limits.ts';
import { slideRows } from './slide.ts';
import { slidingScrewRows } from './sliding-screw.ts';
import { spindleRows } from './spindle.ts';
import { stepperRows } from './stepper.ts';

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
];
