import { Decimal } from 'decimal.js';

/** Dollars, exact. Cents are whole when a figure is printed, never before. */
export type Money = Decimal;

export const dollars = (amount: number | string): Money => new Decimal(amount);

/** Whole cents for the builds, half up as on a till receipt. */
export const toCents = (amount: Money | number): number =>
  new Decimal(amount).times(100).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber();

/** Money paid once and money paid every year are never added: the types keep them apart. */
export interface OnceAndYearly<T> {
  readonly once: T;
  readonly perYear: T;
}
