import type { Spread } from '../report.ts';
import { quantile, sortColumn } from './columns.ts';
import type { Column } from './edition.ts';

/** The builds of a total as quantiles and as twenty equally likely outcomes; `unit` divides the whole numbers of the column. */
export function spreadOf(column: Column, unit: number): Spread {
  const sorted = sortColumn(column);
  const at = (p: number): number => quantile(sorted, p) / unit;
  return {
    p10: at(0.1),
    p25: at(0.25),
    p50: at(0.5),
    p75: at(0.75),
    p80: at(0.8),
    p90: at(0.9),
    twenty: Array.from({ length: 20 }, (_, dot) => at((dot + 0.5) / 20)),
    mean: mean(column) / unit,
  };
}

/** Mean of a column. */
export function mean(column: Column): number {
  let sum = 0;
  for (let at = 0; at < column.length; at += 1) sum += column[at]!;
  return sum / column.length;
}
