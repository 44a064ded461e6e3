import { cuttingRows } from './cutting.ts';
import { cuttingForceRows } from './cutting-force.ts';
import { drillingRows } from './drilling.ts';
import type { PublishedRow } from './row.ts';
import { spindleRows } from './spindle.ts';
import { spindleTorqueRows } from './spindle-torque.ts';
import { threadRows } from './thread.ts';

/** Every published row, by topic. */
export const rows: readonly PublishedRow[] = [
  ...spindleRows,
  ...cuttingRows,
  ...cuttingForceRows,
  ...drillingRows,
  ...spindleTorqueRows,
  ...threadRows,
];
