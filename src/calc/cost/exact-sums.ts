import { Decimal } from 'decimal.js';
import type { Band } from '../core/band.ts';

/** Exact product, dollars to the cent. Whole cents a whole number of times need no decimals to be exact. */
export const times = (band: Band, qty: number): Band => {
  const of = (amount: number): number => {
    const cents = Math.round(amount * 100);
    if (Number.isInteger(qty) && cents / 100 === amount) return (cents * qty) / 100;
    return new Decimal(amount).times(qty).toDecimalPlaces(2, Decimal.ROUND_HALF_UP).toNumber();
  };
  return [of(band[0]), of(band[1]), of(band[2])];
};

/** Exact sum of bands of whole cents, dollars to the cent. */
export function sumOf(bands: readonly Band[]): Band {
  const at = (end: 0 | 1 | 2): number =>
    bands.reduce((cents, band) => cents + Math.round(band[end] * 100), 0) / 100;
  return [at(0), at(1), at(2)];
}
