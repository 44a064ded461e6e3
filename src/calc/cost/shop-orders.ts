import type { State } from '../choices/state.ts';
import type { Money } from '../core/money.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import { parts } from '../trade.ts';
import { addUp } from './amounts.ts';
import { type OrderTerms, termsOf } from './charges.ts';
import type { Orders } from './orders.ts';
import { countryOf, type Ship } from './rates.ts';

/** Lines that are charged together: one shop, and either all spent or all quoted. */
export interface ShopOrder {
  /** Empty where no shop was named. */
  readonly seller: string;
  readonly spent: boolean;
  readonly lines: readonly { readonly at: number; readonly goods: Money }[];
  readonly goods: Money;
  /** Missing where no shop was named: freight, tax and duty are then a share of the goods. */
  readonly terms?: OrderTerms;
}

const shipOf = (at: number, book: PriceBook): Ship => book.parts[parts[at]!.id]?.ship ?? 'parcel';

/** What is in the once-only total and is bought rather than sold. */
const isBought = (at: number): boolean => parts[at]!.credit !== true && parts[at]!.yearly !== true;

/**
 * Purchases by shop, in the order of their names, spent before quoted. `included` says which of them belong to the plan
 * at hand; what is spent always does.
 */
export function shopOrders(
  orders: Orders,
  included: (at: number) => boolean,
  state: State,
  path: Path,
  book: PriceBook,
): ShopOrder[] {
  const groups = new Map<string, { at: number; goods: Money }[]>();
  for (const [at, { purchase, spent, goods }] of orders) {
    if (!goods || !isBought(at) || !(spent || included(at))) continue;
    const key = JSON.stringify([purchase.seller ?? '', spent ? 0 : 1]);
    groups.set(key, [...(groups.get(key) ?? []), { at, goods }]);
  }
  return [...groups.keys()].sort().map((key) => {
    const [seller, quoted] = JSON.parse(key) as [string, number];
    const lines = [...groups.get(key)!].sort((a, b) => a.at - b.at);
    const goods = addUp(lines.map((line) => line.goods));
    const order = { seller, spent: quoted === 0, lines, goods };
    if (seller === '') return order;
    const shop = Object.hasOwn(path.sellers ?? {}, seller) ? path.sellers![seller]! : {};
    const ships = lines.map(({ at }) => shipOf(at, book));
    return { ...order, terms: termsOf(shop, goods, ships, path, countryOf(state)) };
  });
}
