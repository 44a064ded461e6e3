import { planningRows } from './planning.ts';
import { buyingRows, priceRows } from './prices.ts';
import type { PublishedRow } from './row.ts';
import { spindleRows } from './spindle.ts';
import { statisticsRows } from './statistics.ts';
import { heatRows, supplyRows } from './supply.ts';
import { wireRows } from './wire.ts';
import { worthRows } from './worth.ts';

/** Every published row, by topic. */
export const rows: readonly PublishedRow[] = [
  ...spindleRows,
  ...wireRows,
  ...supplyRows,
  ...heatRows,
  ...statisticsRows,
  ...priceRows,
  ...buyingRows,
  ...worthRows,
  ...planningRows,
];
