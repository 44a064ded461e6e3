import type { Band } from '../core/band.ts';
import type { Money } from '../core/money.ts';
import type { Path } from '../core/path.ts';
import { type Purchase, spentStates } from '../core/purchase.ts';
import type { PricedPurchase } from '../report.ts';
import { amountOf, inDollars, toTheCent } from './amounts.ts';
import { packsFor } from './wanted.ts';

/** More of one line than this is a slip of the hand. */
const MOST_UNITS = 1e6;

/** A purchase that counts: units, and what they cost where the price can be used. */
export interface Priced {
  readonly purchase: Purchase;
  readonly spent: boolean;
  /** Units of the list. */
  readonly units: number;
  /** Dollars to the cent. */
  readonly goods?: Money;
  readonly asks?: PricedPurchase['asks'];
}

/** Whether the line says that something is on its way or offered: what is only needed or was sent back is still to buy. */
const counts = (purchase: Purchase | undefined): purchase is Purchase =>
  purchase !== undefined && purchase.state !== 'need' && purchase.state !== 'returned';

const usable = (qty: number | undefined): qty is number =>
  qty !== undefined && Number.isFinite(qty) && qty > 0 && qty <= MOST_UNITS;

/** How many times the typed price is paid. */
function timesPaid({ per = 'unit' }: Purchase, units: number, pack: number): number {
  if (per === 'line') return 1;
  return per === 'pack' ? packsFor(units, pack) : units;
}

/**
 * A typed purchase in units and dollars. `planned` is the number of units the plan asks for, which stands in where the
 * owner gave none; money that is spent on something the plan does not ask for was spent on one of it.
 */
export function pricePurchase(
  purchase: Purchase | undefined,
  planned: number,
  pack: number,
  currency: Path['currency'],
): Priced | undefined {
  if (!counts(purchase)) return undefined;
  const spent = spentStates.includes(purchase.state);
  const units = usable(purchase.qty) ? purchase.qty : planned || 1;
  const amount = amountOf(purchase.price);
  if (!amount) return { purchase, spent, units, asks: purchase.price ? 'number' : 'price' };
  const price = inDollars(amount, purchase.currency, currency);
  if (!price) return { purchase, spent, units, asks: 'currency' };
  return { purchase, spent, units, goods: toTheCent(price.times(timesPaid(purchase, units, pack))) };
}

const perWords = { unit: 'each', pack: 'a pack', line: 'for all' } as const;

const asTyped = ({ price, currency = 'USD', per = 'unit' }: Purchase): string =>
  price ? `${price} ${currency} ${perWords[per]}` : '';

function outside(each: Money, [low, , high]: Band): PricedPurchase['outsideBand'] {
  if (each.lessThan(low)) return 'below';
  return each.greaterThan(high) ? 'above' : undefined;
}

/** A priced purchase as the report shows it, beside our band of one unit. */
export function shownPurchase(priced: Priced, stillNeeded: number, band: Band): PricedPurchase {
  const { purchase, units, goods, asks } = priced;
  const each = goods?.div(units);
  const odd = each && outside(each, band);
  const { seller, date, note } = purchase;
  return {
    state: purchase.state,
    qty: units,
    stillNeeded,
    asTyped: asTyped(purchase),
    ...(goods && each ? { goods: goods.toFixed(2), each: each.toDecimalPlaces(4).toString() } : {}),
    ...(odd ? { outsideBand: odd } : {}),
    ...(asks ? { asks } : {}),
    ...(seller ? { seller } : {}),
    ...(date ? { date } : {}),
    ...(note ? { note } : {}),
  };
}
