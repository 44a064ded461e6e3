import type { Band } from '../core/band.ts';
import { dollars, type Money } from '../core/money.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Charge, SellerRow } from '../report.ts';
import { parts } from '../trade.ts';
import { addUp, centText } from './amounts.ts';
import { carriageEnds, type Due, dueOn, isExact, type OrderTerms } from './charges.ts';
import type { Rate } from './rates.ts';
import type { ShopOrder } from './shop-orders.ts';

const bandOf = (sums: readonly Money[]): Band => {
  const [low = 0, likely = 0, high = 0] = sums.map((sum) => sum.toNumber());
  return [low, likely, high];
};

/** A charge from its sums at the low, likely and high end. */
const charge = (ends: readonly Money[], exact: boolean, how: string): Charge => ({
  ...(exact ? { exact: centText(ends[1]!) } : {}),
  range: bandOf(ends),
  how,
});

const percent = (share: number): string => `${Number((share * 100).toFixed(4))} %`;

const rateWords = ({ own, band }: Rate): string =>
  own === undefined ? `${percent(band[0])} to ${percent(band[2])}, from memory of the trade` : percent(own);

function taxWords({ shop, country, tax }: OrderTerms): string {
  if (shop.taxIncluded) return 'already in the prices';
  if (country !== 'united-states')
    return `${rateWords(tax)} of goods, carriage${shop.abroad ? ' and duty' : ''}`;
  return `${rateWords(tax)} of goods${shop.carriageTaxed ? ' and carriage' : ''}`;
}

const dutyWords = ({ shop, duty }: OrderTerms): string =>
  shop.abroad ? `${rateWords(duty)} of goods and carriage` : 'none: ships within the country';

/** Duty and tax at the low, likely and high end; one sum serves all three where nothing is a range. */
function duesOf(terms: OrderTerms, carriages: readonly Money[]): readonly Due[] {
  const at = (end: number): Due => dueOn(terms, carriages[end]!, terms.tax.band[end]!, terms.duty.band[end]!);
  if (!isExact(terms)) return [at(0), at(1), at(2)];
  const known = at(1);
  return [known, known, known];
}

/** Goods, carriage, tax and duty of one order; every printed sum is rounded once and the total adds the printed ones. */
function termedRow(order: ShopOrder, terms: OrderTerms, book: PriceBook) {
  const carriages = carriageEnds(terms, book);
  const dues = duesOf(terms, carriages);
  const totals = carriages.map((carriage, end) =>
    addUp([order.goods, carriage, dues[end]!.tax, dues[end]!.duty]),
  );
  const carried = terms.carriage !== undefined;
  const dutyKnown = terms.duty.own === 0 || (carried && terms.duty.own !== undefined);
  return {
    carriage: charge(carriages, carried, terms.carriageHow),
    tax: charge(
      dues.map(({ tax }) => tax),
      isExact(terms) || terms.shop.taxIncluded === true,
      taxWords(terms),
    ),
    duty: charge(
      dues.map(({ duty }) => duty),
      dutyKnown,
      dutyWords(terms),
    ),
    total: charge(totals, isExact(terms), 'goods, carriage, tax and duty'),
    ...notesOf(terms),
  };
}

function notesOf({
  shop,
  tax,
  goods,
  net,
  freeFrom,
}: OrderTerms): Pick<SellerRow, 'taxInside' | 'toFreeCarriage'> {
  const short = freeFrom?.minus(net);
  return {
    ...(shop.taxIncluded && tax.own !== undefined ? { taxInside: centText(goods.minus(net)) } : {}),
    ...(short?.greaterThan(0) ? { toFreeCarriage: centText(short) } : {}),
  };
}

const NO_SHOP = 'no shop is named: a share of the goods stands in, as for everything not yet quoted';

/** An order without a shop: the planning share of freight, tax and duty is shown as one sum, under carriage. */
function sharedRow({ goods }: ShopOrder, [low, likely, high]: Band) {
  const none = [0, 0, 0].map(dollars);
  const shared = [low, likely, high].map((share) => goods.times(share).toDecimalPlaces(2, 4));
  return {
    carriage: charge(shared, false, NO_SHOP),
    tax: charge(none, false, NO_SHOP),
    duty: charge(none, false, NO_SHOP),
    total: charge(
      shared.map((share) => share.plus(goods)),
      false,
      NO_SHOP,
    ),
  };
}

/** What each order costs to the door, one row a shop and state. */
export const sellerRows = (orders: readonly ShopOrder[], landedBand: Band, book: PriceBook): SellerRow[] =>
  orders.map((order) => ({
    seller: order.seller,
    state: order.spent ? 'spent' : 'quoted',
    lines: order.lines.map(({ at }) => parts[at]!.id),
    goods: centText(order.goods),
    ...(order.terms ? termedRow(order, order.terms, book) : sharedRow(order, landedBand)),
  }));

/** Dollars known to the cent of the orders in one state: goods, and whichever charges are exact. */
export function exactSum(rows: readonly SellerRow[], state: SellerRow['state']): Money {
  const sums = rows
    .filter((row) => row.state === state)
    .flatMap(({ goods, carriage, tax, duty }) => [goods, carriage.exact, tax.exact, duty.exact]);
  return addUp(sums.filter((sum) => sum !== undefined).map(dollars));
}
