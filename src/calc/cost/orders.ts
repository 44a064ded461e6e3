import type { Path } from '../core/path.ts';
import { parts } from '../trade.ts';
import type { Edition } from './edition.ts';
import { type Priced, pricePurchase } from './purchase-lines.ts';
import { unitsToPay, type Wanted } from './wanted.ts';

/** Purchases that count, by position of the part. */
export type Orders = ReadonlyMap<number, Priced>;

export const NO_ORDERS: Orders = new Map();

const positions = new Map(parts.map((part, at) => [part.id, at]));

/** What the owner quoted or bought, priced once on what the plan wants: amounts are the same in every build. */
export function ordersOf(wanted: readonly Wanted[], path: Path, { book }: Edition): Orders {
  const { purchases, currency } = path;
  if (!purchases) return NO_ORDERS;
  const orders = new Map<number, Priced>();
  for (const [id, purchase] of Object.entries(purchases)) {
    const at = positions.get(id);
    if (at === undefined) continue;
    const planned = unitsToPay(wanted[at]!.need + wanted[at]!.keep, id, book);
    const priced = pricePurchase(purchase, planned, book.parts[id]?.pack ?? 1, currency);
    if (priced) orders.set(at, priced);
  }
  return orders;
}
