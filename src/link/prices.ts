import { type Family, isFamily } from '../calc/core/family.ts';
import type { Path } from '../calc/core/path.ts';
import { type Purchase, purchaseStates, type Seller } from '../calc/core/purchase.ts';
import { isAmount, isCurrency, isId, readDay, writeDay } from './written.ts';

/**
 * Prices, orders, shops' terms and the owner's own figures as pieces of a link, only when the owner asks for it: enough
 * that the figures open to the same cents elsewhere. Words stay out: notes are never written, shops become letters and
 * families of parts numbers.
 */

export const priceKeys = [
  'orders',
  'shops',
  'money',
  'chances',
  'allowance',
  'first-day',
  'families',
] as const;

export type PriceKey = (typeof priceKeys)[number];

export const isPriceKey = (key: string): key is PriceKey => priceKeys.some((each) => each === key);

/** What only the owner knows besides ticks, readings and hours. */
export type Prices = Pick<
  Path,
  'purchases' | 'sellers' | 'currency' | 'chances' | 'allowance' | 'start' | 'families'
>;

/** As much as a device keeps of them: what is above it is not written. */
export const most = {
  orders: 500,
  shops: 100,
  chances: 200,
  families: 60,
  units: 1e6,
  quantity: 1e6,
} as const;

const isShare = (value: unknown): value is number => typeof value === 'number' && value >= 0 && value <= 1;

const withoutGaps = <T extends object>(all: T): T =>
  Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as T;

const only = <T>(value: T | undefined, isSound: (value: T) => boolean): T | undefined =>
  value !== undefined && isSound(value) ? value : undefined;

/** Orders are charged shop by shop in the order of these texts, and an order without a shop is that of the empty name. */
const placeOf = (name: string): string => JSON.stringify([name, 0]);

const letters = (at: number, long: boolean): string => {
  const last = String.fromCharCode(97 + (at % 26));
  return long ? String.fromCharCode(97 + Math.floor(at / 26)) + last : last;
};

/** Shops by the letters that stand for them. They sort as the names do, so that the builds draw the same carriage. */
function lettersOf({ purchases = {}, sellers = {} }: Prices): ReadonlyMap<string, string> {
  const named = Object.values(purchases).flatMap(({ seller }) => seller || []);
  const names = [...new Set([...Object.keys(sellers), ...named])]
    .filter((name) => name !== '')
    .sort((a, b) => (placeOf(a) < placeOf(b) ? -1 : 1));
  return new Map(
    names.map((name, at) => [
      name,
      `${placeOf(name) < placeOf('') ? '!' : ''}shop-${letters(at, names.length > 26)}`,
    ]),
  );
}

function sentPurchase(purchase: Purchase, shops: ReadonlyMap<string, string>): Purchase {
  const { state, price, per, currency, qty, date, seller } = purchase;
  return withoutGaps({
    state,
    price: only(price, isAmount),
    per,
    currency: only(currency, isCurrency),
    qty: only(qty, (units) => units > 0 && units <= most.units),
    date: only(date, (day) => readDay(writeDay(day)) === day),
    seller: seller ? shops.get(seller) : undefined,
  }) as Purchase;
}

function sentShop({ freight, freeFrom, currency, abroad, dutyRate, ...tax }: Seller): Seller {
  return withoutGaps({
    freight: only(freight, isAmount),
    freeFrom: only(freeFrom, isAmount),
    currency: only(currency, isCurrency),
    abroad: abroad || undefined,
    dutyRate: only(dutyRate, isShare),
    carriageTaxed: tax.carriageTaxed || undefined,
    taxIncluded: tax.taxIncluded || undefined,
  }) as Seller;
}

const isSent = (family: Family): boolean =>
  isFamily(family) &&
  [family.piecesPerBatch, family.batchesPerYear, family.outsidePrice ?? 0]
    .concat(Object.values(family.byHand), Object.values(family.byProgram))
    .every((value) => value <= most.quantity);

export const familyName = (at: number): string => `Parts ${at + 1}`;

/** Entries that are left after a look at each, in the order of their keys; undefined where there are none. */
function entries<From, To>(
  all: Readonly<Record<string, From>> | undefined,
  limit: number,
  take: (key: string, value: From) => readonly [string, To] | undefined,
): Readonly<Record<string, To>> | undefined {
  const taken = Object.entries(all ?? {}).flatMap(([key, value]) => {
    const entry = take(key, value);
    return entry ? [entry] : [];
  });
  const sorted = taken.sort(([a], [b]) => (a < b ? -1 : 1)).slice(0, limit);
  return sorted.length > 0 ? Object.fromEntries(sorted) : undefined;
}

/** What a link says of these: without words, and without what was typed and cannot be a figure. Sums stay the same. */
export function sentPrices(path: Prices): Prices {
  const shops = lettersOf(path);
  const families = (path.families ?? [])
    .filter(isSent)
    .slice(0, most.families)
    .map((family, at) => ({ ...family, name: familyName(at) }));
  return withoutGaps({
    purchases: entries(path.purchases, most.orders, (id, purchase) =>
      isId(id) && purchaseStates.includes(purchase.state) ? [id, sentPurchase(purchase, shops)] : undefined,
    ),
    sellers: entries(path.sellers, most.shops, (name, shop) => {
      const letter = shops.get(name);
      return letter ? [letter, sentShop(shop)] : undefined;
    }),
    currency: only(path.currency, ({ code, perDollar }) => {
      return isCurrency(code) && isAmount(perDollar) && Number(perDollar) > 0;
    }),
    chances: entries(path.chances, most.chances, (id, chance) =>
      isId(id) && isShare(chance) ? [id, chance] : undefined,
    ),
    allowance: only(path.allowance, isShare),
    start: only(path.start, (day) => readDay(writeDay(day)) === day),
    families: families.length > 0 ? families : undefined,
  }) as Prices;
}
