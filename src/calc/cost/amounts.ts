import { Decimal } from 'decimal.js';
import { dollars, type Money, toCents } from '../core/money.ts';
import type { OwnCurrency } from '../core/purchase.ts';
import { roundMoney } from '../formulas/prices.ts';

/** A sum as an owner may have typed it: digits, and after one point some more. No sign, no exponent, no thousands marks. */
const plainAmount = /^\d{1,12}(\.\d{1,8})?$/;

/** Typed text as an exact sum; undefined where it is no plain amount. */
export const amountOf = (text: string | undefined): Money | undefined =>
  text !== undefined && plainAmount.test(text) ? dollars(text) : undefined;

/** US dollars for a sum in another currency, exact to 20 digits; undefined where the owner gave no usable rate for it. */
export function inDollars(amount: Money, currency = 'USD', own?: OwnCurrency): Money | undefined {
  if (currency === 'USD') return amount;
  const rate = own?.code === currency ? amountOf(own.perDollar) : undefined;
  return rate?.greaterThan(0) ? amount.div(rate) : undefined;
}

/** A typed sum in dollars; undefined where the text or the currency cannot be used. */
export function typedDollars(
  text: string | undefined,
  currency: string | undefined,
  own: OwnCurrency | undefined,
): Money | undefined {
  const amount = amountOf(text);
  return amount && inDollars(amount, currency, own);
}

/** A printed sum: to the cent, half up. Rounded here once and never again. */
export const toTheCent = (amount: Money): Money => roundMoney.compute({ amount, places: 2 });

/** Dollars of whole cents as decimal text: "37.50". */
export const centText = (amount: Money): string => amount.toFixed(2);

/** Whole cents as decimal text. */
export const centsText = (cents: number): string => centText(dollars(cents).div(100));

/** Whole cents of a printed sum, for the builds. */
export const wholeCents = (printed: Money): number => toCents(printed);

export const addUp = (sums: readonly Money[]): Money =>
  sums.reduce((total, each) => total.plus(each), new Decimal(0));
