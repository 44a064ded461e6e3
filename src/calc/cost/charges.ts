import { dollars, type Money } from '../core/money.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Seller } from '../core/purchase.ts';
import { importCharges, priceBeforeTax, salesTax } from '../formulas/prices.ts';
import { toTheCent, typedDollars } from './amounts.ts';
import { carriageBand, dutyRateOf, heaviest, type Rate, type Ship, taxRateOf } from './rates.ts';

/** One order at one shop, and the terms it is charged on. */
export interface OrderTerms {
  readonly shop: Seller;
  readonly country: string;
  /** Sum of the printed lines, as the shop prices them. */
  readonly goods: Money;
  /** The same without the tax that is in them. */
  readonly net: Money;
  readonly ship: Ship;
  readonly tax: Rate;
  readonly duty: Rate;
  /** Exact carriage, or undefined where only the class of shipping is known. */
  readonly carriage?: Money;
  readonly carriageHow: string;
  /** Goods from which carriage is free, dollars. */
  readonly freeFrom?: Money;
}

const shipWords: Readonly<Record<Ship, string>> = {
  none: 'nothing to carry',
  letter: 'a letter or small packet',
  parcel: 'a parcel to 5 kg',
  heavy: 'a heavy or long parcel',
  freight: 'freight over 20 kg',
};

/** The terms of an order: what is typed goes first, then our ranges. */
export function termsOf(
  shop: Seller,
  goods: Money,
  ships: readonly Ship[],
  path: Path,
  country: string,
): OrderTerms {
  const tax = taxRateOf(path, country);
  const inside = shop.taxIncluded === true && tax.own !== undefined;
  const net = inside ? toTheCent(priceBeforeTax.compute({ total: goods, rate: tax.own })) : goods;
  const freeFrom = typedDollars(shop.freeFrom, shop.currency, path.currency);
  const ship = heaviest(ships);
  return {
    ...{ shop, country, goods, net, ship, tax, duty: dutyRateOf(path, shop) },
    ...carriageOf(shop, net, ship, freeFrom, path),
    ...(freeFrom ? { freeFrom } : {}),
  };
}

function carriageOf(
  shop: Seller,
  net: Money,
  ship: Ship,
  freeFrom: Money | undefined,
  path: Path,
): Pick<OrderTerms, 'carriage' | 'carriageHow'> {
  if (ship === 'none') return { carriage: dollars(0), carriageHow: shipWords.none };
  if (freeFrom && net.greaterThanOrEqualTo(freeFrom))
    return { carriage: dollars(0), carriageHow: `free from ${freeFrom.toFixed(2)} dollars` };
  const typed = typedDollars(shop.freight, shop.currency, path.currency);
  if (typed) return { carriage: toTheCent(typed), carriageHow: 'as you typed it' };
  return { carriageHow: `range for ${shipWords[ship]}, from memory of the trade` };
}

/** Duty and tax of an order at these figures, exact. */
export interface Due {
  readonly duty: Money;
  readonly tax: Money;
}

/**
 * Within a country with sales tax: tax on the goods, and on carriage where the shop's tax counts it. With VAT: on goods
 * and carriage; from abroad on duty too. Duty on goods and carriage. Prices that hold the tax are not taxed again.
 */
export function dueOn(
  { shop, country, goods, net }: OrderTerms,
  carriage: Money,
  taxRate: number,
  dutyRate: number,
): Due {
  const none = dollars(0);
  const border = importCharges.compute({
    ...{ goods: net, freight: carriage, insurance: none, localCharges: none, dutyRate, taxRate },
  });
  const duty = toTheCent(border.duty);
  if (shop.taxIncluded) return { duty, tax: none };
  if (country !== 'united-states') return { duty, tax: toTheCent(border.tax) };
  const taxed = shop.carriageTaxed ? goods.plus(carriage) : goods;
  return { duty, tax: toTheCent(salesTax.compute({ amount: taxed, rate: taxRate })) };
}

/** Whether every figure of the charges is known to the cent. */
export const isExact = ({ carriage, tax, duty, shop }: OrderTerms): boolean =>
  carriage !== undefined && duty.own !== undefined && (tax.own !== undefined || shop.taxIncluded === true);

/** Carriage at the low, likely and high end, dollars. */
export const carriageEnds = ({ carriage, ship }: OrderTerms, book: PriceBook): readonly Money[] =>
  carriage ? [carriage, carriage, carriage] : carriageBand(ship, book).map(dollars);
