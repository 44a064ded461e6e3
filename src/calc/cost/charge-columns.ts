import { dollars } from '../core/money.ts';
import type { PriceBook } from '../core/price-book.ts';
import { wholeCents } from './amounts.ts';
import { dueOn, isExact, type OrderTerms } from './charges.ts';
import { constant } from './constant.ts';
import type { Column } from './edition.ts';
import { scoresToPert } from './pert.ts';
import { carriageBand, type Rate } from './rates.ts';
import type { ShopOrder } from './shop-orders.ts';
import { stratifiedScores } from './strata.ts';

/** Charges of one order of which something is only known as a range: columns of cents and of shares. */
export interface OpenCharge {
  readonly terms: OrderTerms;
  readonly carriage: Column;
  readonly duty: Column;
  readonly tax: Column;
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

/** A figure that is the same in every build, as a column: the loop over the builds then reads all alike. */
const asColumn = (value: Column | number): Column => (typeof value === 'number' ? constant(value) : value);

const openCharge = (terms: OrderTerms, nth: number, book: PriceBook): OpenCharge => ({
  terms,
  carriage: asColumn(carriageColumn(book, terms, nth)),
  duty: asColumn(rateColumn(book, terms.duty)),
  tax: asColumn(terms.shop.taxIncluded ? 0 : rateColumn(book, terms.tax)),
});

/** Adds carriage, duty and tax of one order to the builds `from` to `to`: the sums of `dueOn` in whole cents. */
export function addOpen(
  sum: Column,
  { terms, carriage, duty, tax }: OpenCharge,
  from: number,
  to: number,
): void {
  const sales = terms.country === 'united-states';
  const net = wholeCents(terms.net);
  const taxedGoods = sales ? wholeCents(terms.goods) : net;
  const taxedCarriage = !sales || terms.shop.carriageTaxed === true ? 1 : 0;
  const taxedDuty = sales ? 0 : 1;
  for (let build = from; build < to; build += 1) {
    const carried = carriage[build]!;
    const dutyDue = duty[build]! * (net + carried);
    const taxed = taxedGoods + taxedCarriage * carried + taxedDuty * dutyDue;
    // Half up by floor: several times faster than Math.round, and the same for what is never below zero.
    sum[build]! += carried + Math.floor(dutyDue + 0.5) + Math.floor(taxed * tax[build]! + 0.5);
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
