import { dollars } from '../core/money.ts';
import type { PriceBook } from '../core/price-book.ts';
import { wholeCents } from './amounts.ts';
import { dueOn, isExact, type OrderTerms } from './charges.ts';
import type { Column } from './edition.ts';
import { scoresToPert } from './pert.ts';
import { carriageBand, type Rate } from './rates.ts';
import type { ShopOrder } from './shop-orders.ts';
import { stratifiedScores } from './strata.ts';

/** Charges of one order of which something is only known as a range: cents, or a column of them, and shares. */
export interface OpenCharge {
  readonly terms: OrderTerms;
  readonly carriage: Column | number;
  readonly duty: Column | number;
  readonly tax: Column | number;
}

/** What comes on top of quoted and bought goods: exact cents, and what has to be worked out build by build. */
export interface ChargeSums {
  readonly cents: number;
  readonly open: readonly OpenCharge[];
}

const drawn = new WeakMap<PriceBook, Map<string, Column>>();

/** A drawn column that is made at first use and kept with its edition. */
function kept(book: PriceBook, name: string, make: () => Column): Column {
  const columns = drawn.get(book) ?? new Map<string, Column>();
  drawn.set(book, columns);
  const known = columns.get(name) ?? make();
  columns.set(name, known);
  return known;
}

const rateColumn = (book: PriceBook, { own, band, name }: Rate): Column | number =>
  own ?? kept(book, name, () => scoresToPert(stratifiedScores(book.seed, name), band));

/** Cents of carriage; the n-th order of a class has its own draws, so that several do not move as one. */
function carriageColumn(book: PriceBook, { carriage, ship }: OrderTerms, nth: number): Column | number {
  if (carriage) return wholeCents(carriage);
  const name = `carriage ${ship} ${nth}`;
  return kept(book, name, () =>
    scoresToPert(stratifiedScores(book.seed, name), carriageBand(ship, book)).map((each) =>
      Math.round(100 * each),
    ),
  );
}

const at = (value: Column | number, build: number): number =>
  typeof value === 'number' ? value : value[build]!;

const openCharge = (terms: OrderTerms, nth: number, book: PriceBook): OpenCharge => ({
  terms,
  carriage: carriageColumn(book, terms, nth),
  duty: rateColumn(book, terms.duty),
  tax: terms.shop.taxIncluded ? 0 : rateColumn(book, terms.tax),
});

/** Adds carriage, duty and tax of one order to the builds `from` to `to`: the sums of `dueOn` in whole cents. */
export function addOpen(
  sum: Column,
  { terms, carriage, duty, tax }: OpenCharge,
  from: number,
  to: number,
): void {
  const sales = terms.country === 'united-states';
  const carriageTaxed = terms.shop.carriageTaxed === true;
  const net = wholeCents(terms.net);
  const goods = wholeCents(terms.goods);
  for (let build = from; build < to; build += 1) {
    const carried = at(carriage, build);
    const dutyDue = at(duty, build) * (net + carried);
    const taxed = sales ? goods + (carriageTaxed ? carried : 0) : net + carried + dutyDue;
    sum[build]! += carried + Math.round(dutyDue) + Math.round(taxed * at(tax, build));
  }
}

/** Cents on top of an order of which everything is known. */
function exactCents(terms: OrderTerms): number {
  const carriage = terms.carriage ?? dollars(0);
  const { duty, tax } = dueOn(terms, carriage, terms.tax.own ?? 0, terms.duty.own ?? 0);
  return wholeCents(carriage) + wholeCents(duty) + wholeCents(tax);
}

/** Everything on top of the orders of these shops. Orders without a shop have their share of the goods instead. */
export function chargeSums(orders: readonly ShopOrder[], book: PriceBook): ChargeSums {
  let cents = 0;
  const open: OpenCharge[] = [];
  orders.forEach(({ terms }, nth) => {
    if (!terms) return;
    if (isExact(terms)) cents += exactCents(terms);
    else open.push(openCharge(terms, nth, book));
  });
  return { cents, open };
}
