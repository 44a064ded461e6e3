import type { Family } from '../core/family.ts';
import type { Present } from '../paths/present.ts';
import type { Spread } from '../report.ts';
import type { Payback } from './payback.ts';

/** Everything that signals and verdict speak from. Dollars, hours, hours a year, dollars a year. */
export interface Known {
  readonly present: Present;
  readonly families: readonly Family[];
  readonly money: Spread;
  readonly hours: Spread;
  readonly saved: Spread | undefined;
  readonly likelySaved: number;
  readonly outside: number;
  readonly payback: readonly Payback[];
  /** The hours of building are the fun. */
  readonly hobby: boolean;
}

/** Two figures, and rounder above a hundred: a sentence promises no more than the sum knows. */
export function round(value: number): string {
  if (value < 10) return String(Math.round(value * 10) / 10);
  const step = [1000, 100, 10].find((each) => value >= each * 10) ?? 1;
  return String(Math.round(value / step) * step).replace(/\B(?=(\d{3})+$)/g, ',');
}
