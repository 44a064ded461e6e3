import type { Range } from '../core/range.ts';
import { quantile, sortColumn } from '../cost/columns.ts';
import type { Column } from '../cost/edition.ts';

/** A column of builds as a range; `unit` divides its numbers. */
export function rangeOf(column: Column, unit = 1): Range {
  const sorted = sortColumn(column);
  const at = (p: number): number => quantile(sorted, p) / unit;
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}
