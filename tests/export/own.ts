// Random private parts of a path: what an owner may have typed about purchases, shops, currency, chances and allowance.
import fc from 'fast-check';
import { type Purchase, purchaseStates } from '../../src/calc/core/purchase.ts';
import { parts, risks } from '../../src/calc/trade.ts';
import type { Own } from '../../src/export/own.ts';

const cents = (most: number) =>
  fc.integer({ min: 0, max: most }).map((n) => `${Math.floor(n / 100)}.${String(n % 100).padStart(2, '0')}`);
const code = fc.constantFrom('USD', 'EUR', 'GBP', 'SEK');
const words = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 20 })
  // biome-ignore lint/suspicious/noControlCharactersInRegex: what no owner types
  .map((text) => text.replace(/[\u0000-\u001F\u007F]/g, ' '))
  .filter((text) => text.isWellFormed());
const sellerName = words.filter((name) => !(name in {}));
const day = fc
  .date({ min: new Date('2020-01-01'), max: new Date('2030-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const share = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);

const some = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });

const withoutGaps = <T extends object>(drawn: T): T =>
  Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)) as T;

export const aPurchase: fc.Arbitrary<Purchase> = fc
  .record({
    state: fc.constantFrom(...purchaseStates),
    price: some(cents(10_000_000)),
    per: some(fc.constantFrom('unit' as const, 'pack' as const, 'line' as const)),
    currency: some(code),
    qty: some(fc.integer({ min: 1, max: 400 })),
    date: some(day),
    seller: some(sellerName),
    note: some(words),
  })
  .map(withoutGaps);

const seller = fc
  .record({
    freight: some(cents(100_000)),
    freeFrom: some(cents(100_000)),
    currency: some(code),
    abroad: some(fc.boolean()),
    dutyRate: some(share),
    carriageTaxed: some(fc.boolean()),
    taxIncluded: some(fc.boolean()),
  })
  .map(withoutGaps);

const ids = (list: readonly { readonly id: string }[]) => fc.constantFrom(...list.map(({ id }) => id));
const full = <T>(entries: fc.Arbitrary<Record<string, T>>) =>
  some(entries.filter((each) => Object.keys(each).length > 0));

/** Anything an owner may have typed about money. */
export const anyOwn: fc.Arbitrary<Own> = fc
  .record({
    purchases: full(fc.dictionary(ids(parts), aPurchase, { maxKeys: 20, noNullPrototype: true })),
    sellers: full(fc.dictionary(sellerName, seller, { maxKeys: 4, noNullPrototype: true })),
    currency: some(
      fc.record({ code, perDollar: fc.integer({ min: 1, max: 1e6 }).map((n) => String(n / 1000)) }),
    ),
    chances: full(fc.dictionary(ids(risks), share, { maxKeys: 6, noNullPrototype: true })),
    allowance: some(share),
    start: some(day),
  })
  .map(withoutGaps);
