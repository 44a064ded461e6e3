import { quantile, sortColumn } from './columns.ts';
import type { Column } from './edition.ts';

/** How one total differs from another, build by build: what is luck in both falls out. */
export interface Difference {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** `there` less `here` in the same builds; `unit` divides the whole numbers of the columns. */
export function differenceOfBuilds(here: Column, there: Column, unit: number): Difference {
  const sorted = sortColumn(there.map((value, build) => value - here[build]!));
  const at = (p: number): number => quantile(sorted, p) / unit;
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}
