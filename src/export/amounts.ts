import { Decimal } from 'decimal.js';
import type { Band } from '../calc/core/band.ts';

/** Decimal text of dollars to the cent: the ends of a range, and what is likely between them. */
export interface AmountRange {
  readonly low: string;
  readonly likely: string;
  readonly high: string;
}

const centText = (dollars: number): string => new Decimal(dollars).toFixed(2, Decimal.ROUND_HALF_UP);

/** A band of dollars as it is printed, each figure rounded once. */
export const rangeOf = ([low, likely, high]: Band): AmountRange => ({
  low: centText(low),
  likely: centText(likely),
  high: centText(high),
});

/** The exact sum of decimal texts, to the cent. */
export const sumOf = (amounts: readonly string[]): string =>
  amounts.reduce((total, amount) => total.plus(amount), new Decimal(0)).toFixed(2);
