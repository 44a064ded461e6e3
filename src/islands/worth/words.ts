import type { Payback } from '../../calc/choosing.ts';
import { counted, middleHalf, moneyRange, plain, significant } from '../shared/format.ts';

const MONTHS = 12;

/** "3.2 years", "7 months", "never": how long until it has paid for itself. */
export function yearsText(years: number | undefined): string {
  if (years === undefined) return 'never';
  if (years < 1 / MONTHS) return 'under a month';
  if (years < 1) return counted(Math.round(years * MONTHS), 'month');
  return counted(Number(significant(years, 2).toFixed(1)), 'year');
}

/** "Half of the ways within 3.2 years; never in 2 of 20." */
export function paybackText({ typical, never }: Payback): string {
  if (never === 20) return 'never';
  const half = typical === undefined ? 'not in half of the ways' : yearsText(typical);
  return never > 0 ? `${half}; never in ${never} of 20` : half;
}

/** Pieces from which a batch pays: "6 pieces", "every batch", "never". */
export function breakEvenText(pieces: number | undefined): string {
  if (pieces === undefined) return 'never';
  const whole = Math.ceil(pieces - 1e-9);
  return whole <= 1 ? 'any batch' : `${plain(whole)} pieces`;
}

/** The middle half of twenty amounts, in words. */
export function halfMoney(twenty: readonly number[]): string {
  const { from, to } = middleHalf(twenty);
  return moneyRange(from, to);
}
