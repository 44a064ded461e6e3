// Random quotes, orders, shops and rates for property tests.
import fc from 'fast-check';
import type { Path } from '../src/calc/core/path.ts';
import { type Purchase, purchaseStates, type Seller } from '../src/calc/core/purchase.ts';
import { parts, risks } from '../src/calc/trade.ts';

const amount = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 0, max: 200_000 }).map((cents) => (cents / 100).toFixed(2)) },
  { weight: 1, arbitrary: fc.constantFrom('12', '0.5', '9.999', '', 'twelve', '-3', '1e9', '1,5') },
);
const currency = fc.constantFrom(undefined, undefined, 'USD', 'EUR', 'GBP');
const shopNames = ['corner shop', 'far away', 'steel yard', '__proto__'];

/** An object without the keys that were drawn as missing. */
const without = <T extends object>(drawn: T): T =>
  Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)) as T;

export const anyPurchase: fc.Arbitrary<Purchase> = fc
  .record({
    state: fc.constantFrom(...purchaseStates),
    price: fc.oneof({ weight: 9, arbitrary: amount }, { weight: 1, arbitrary: fc.constant(undefined) }),
    per: fc.constantFrom(undefined, 'unit' as const, 'pack' as const, 'line' as const),
    currency,
    qty: fc.oneof(fc.constant(undefined), fc.integer({ min: 1, max: 40 }), fc.constantFrom(0, -2, 2.5)),
    seller: fc.constantFrom(undefined, ...shopNames),
  })
  .map((drawn) => without(drawn) as Purchase);

const anySeller: fc.Arbitrary<Seller> = fc
  .record({
    freight: fc.oneof(fc.constant(undefined), amount),
    freeFrom: fc.oneof(fc.constant(undefined), amount),
    currency,
    abroad: fc.boolean(),
    dutyRate: fc.oneof(fc.constant(undefined), fc.double({ min: 0, max: 0.6, noNaN: true })),
    carriageTaxed: fc.boolean(),
    taxIncluded: fc.boolean(),
  })
  .map((drawn) => without(drawn) as Seller);

const rates = fc
  .record({
    'tax-rate': fc.constantFrom(undefined, 0, 0.0825, 0.2),
    'duty-rate': fc.constantFrom(undefined, 0, 0.1),
    'landed-rate': fc.constantFrom(undefined, undefined, 0.3),
  })
  .map((drawn) => without(drawn) as Record<string, number>);

const ids = parts.map(({ id }) => id);
const dictionary = <T>(keys: readonly string[], value: fc.Arbitrary<T>, most: number) =>
  fc
    .uniqueArray(fc.constantFrom(...keys), { maxLength: most })
    .chain((picked) =>
      fc
        .tuple(...picked.map(() => value))
        .map((values) => Object.fromEntries(picked.map((key, at) => [key, values[at]!] as const))),
    );

/** The same path with quotes, orders, shops, rates, chances and sometimes an allowance. `lines` are ids worth buying. */
export const boughtOn = (path: Path, lines: readonly string[] = ids): fc.Arbitrary<Path> =>
  fc
    .record({
      purchases: dictionary(
        [...lines, ...ids.slice(0, 10)].filter((id, at, all) => all.indexOf(id) === at),
        anyPurchase,
        25,
      ),
      sellers: dictionary(shopNames.slice(0, 3), anySeller, 3),
      facts: rates,
      currency: fc.constantFrom(
        undefined,
        { code: 'EUR', perDollar: '0.92' },
        { code: 'GBP', perDollar: '0' },
      ),
      country: fc.constantFrom('united-states', 'vat-country', 'elsewhere'),
      owned: fc.subarray([...lines], { maxLength: 6 }),
      chances: dictionary(
        risks.map(({ id }) => id),
        fc.double({ min: 0, max: 1, noNaN: true }),
        5,
      ),
      allowance: fc.constantFrom(undefined, undefined, 0, 0.15),
    })
    .map(({ facts, country, currency: own, allowance, ...rest }) => ({
      ...path,
      ...rest,
      facts: { ...path.facts, ...facts },
      answers: { ...path.answers, country: [country] },
      ...(own ? { currency: own } : {}),
      ...(allowance === undefined ? {} : { allowance }),
    }));
