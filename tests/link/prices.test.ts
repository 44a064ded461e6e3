import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Path } from '../../src/calc/core/path.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { facts } from '../../src/calc/facts.ts';
import { decisions } from '../../src/calc/guide.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { knownOwn } from '../../src/export/known-own.ts';
import { type Own, splitOwn } from '../../src/export/own.ts';
import { readOwn } from '../../src/export/read-own.ts';
import { encodeComparison } from '../../src/link/comparison.ts';
import { decodeComparison, decodePath } from '../../src/link/decode.ts';
import { encodePath } from '../../src/link/encode.ts';
import { priceKeys, sentPrices } from '../../src/link/prices.ts';
import { progressKeys } from '../../src/link/progress.ts';
import { quickly } from '../cases.ts';
import { anyOwn } from '../export/own.ts';
import { boughtOn } from '../purchases.ts';

const path: Path = { ...referencePaths[0]!.path, edition: currentEdition.edition };
const lines = evaluate(path, currentEdition).bill.once.map(({ part }) => part);
const [first, second, third] = lines as [string, string, string];
const sent = (whole: Path): string => encodePath(whole, { prices: true });

/** What the sums read of an owner's part: names and notes, and what was typed and is no figure, do not count. */
const figuresOf = (report: ReturnType<typeof evaluate>) => ({
  money: report.money,
  hours: report.hours,
  weeksOut: report.weeksOut,
  orders: report.sellers.map(({ seller: _, ...row }) => row),
});

const families: Own['families'] = [
  {
    name: 'knurled knobs for Mr Secret',
    piecesPerBatch: 30,
    batchesPerYear: 12,
    byHand: { setUp: 0.4, piece: 1 / 3 },
    byProgram: { firstSetUp: 2, setUp: 0.4, attended: 1e-7 },
    shape: 'plain',
    outsidePrice: 12.5,
  },
];

describe('prices, orders and terms of shops in a link', () => {
  it('stay out unless they are asked for, and words always', () => {
    const whole: Path = {
      ...path,
      purchases: { [first]: { state: 'quoted', price: '12.50', seller: 'secret yard', note: 'secret deal' } },
      sellers: { 'secret yard': { freight: '5' } },
      families: families!,
    };
    expect(encodePath(whole)).toBe(encodePath(path));
    expect(sent(whole).toLowerCase()).not.toContain('secret');
    expect(decodePath(sent(whole)).path.sellers).toEqual({ 'shop-a': { freight: '5' } });
  });

  it('can be read by a person', () => {
    const whole: Path = {
      ...path,
      purchases: {
        [first]: {
          ...{ state: 'ordered', price: '12.50', per: 'pack', currency: 'EUR', qty: 4 },
          ...{ date: '2027-01-03', seller: 'far away' },
        },
      },
      sellers: { 'far away': { freight: '8.00', abroad: true, dutyRate: 0.05, taxIncluded: true } },
      currency: { code: 'EUR', perDollar: '0.92' },
      allowance: 0.15,
      start: '2027-02-01',
    };
    const link = sent(whole);
    expect(link).toContain(`orders=${first}:ordered/12.50/pack/EUR/x4/on20270103/shop-a&`);
    expect(link).toContain('shops=shop-a:carriage-8.00/abroad/duty-0.05/tax-in-prices');
    for (const pair of ['money=EUR:0.92', 'allowance=0.15', 'first-day=20270201'])
      expect(link).toContain(pair);
  });

  it('come back as they were, apart from names and notes', () => {
    fc.assert(
      fc.property(anyOwn, fc.boolean(), (own, made) => {
        const whole: Path = { ...path, ...own, ...(made ? { families: families! } : {}) };
        const { path: read, notes } = decodePath(sent(whole));
        expect(notes).toEqual([]);
        const { own: back, path: rest } = splitOwn(read);
        expect(rest).toEqual(path);
        expect(back).toEqual(sentPrices(whole));
        expect(sent(read)).toBe(sent(whole));
        expect(readOwn(JSON.parse(JSON.stringify(back)), knownOwn)).toEqual({ own: back, notes: [] });
      }),
      { numRuns: quickly(300) },
    );
  });

  it('open to the same cents elsewhere, whatever the shops are called', () => {
    fc.assert(
      fc.property(boughtOn(path, lines), fc.constantFrom('', '!', ' ', 'Ä', '"'), (drawn, mark) => {
        const renamed = (name: string) => `${mark}${name}`;
        const whole: Path = {
          ...drawn,
          purchases: Object.fromEntries(
            Object.entries(drawn.purchases ?? {}).map(([id, { seller, ...purchase }]) => [
              id,
              seller ? { ...purchase, seller: renamed(seller) } : purchase,
            ]),
          ),
          sellers: Object.fromEntries(
            Object.entries(drawn.sellers ?? {}).map(([name, shop]) => [renamed(name), shop]),
          ),
        };
        const { path: read, notes } = decodePath(sent(whole));
        expect(notes).toEqual([]);
        expect(figuresOf(evaluate(read, currentEdition))).toEqual(figuresOf(evaluate(whole, currentEdition)));
      }),
      { numRuns: quickly(80) },
    );
  }, 300_000);

  it('of more shops than there are letters still sort as the names do', () => {
    const names = Array.from({ length: 60 }, (_, at) => `yard ${String(at).padStart(2, '0')}`);
    const sellers = Object.fromEntries(names.map((name, at) => [name, { freight: `${at}` }]));
    const { path: read, notes } = decodePath(sent({ ...path, sellers }));
    expect(notes).toEqual([]);
    expect(Object.values(read.sellers!)).toEqual(Object.values(sellers));
    expect(Object.keys(read.sellers!)).toEqual([...Object.keys(read.sellers!)].sort());
  });

  it.each([
    [
      'orders',
      `${first}:quoted/twelve,${second}:quoted/12,${third}`,
      2,
      { purchases: { [second]: { state: 'quoted', price: '12' } } },
    ],
    ['orders', `${first}:12,no-such-part:quoted/3,__proto__:quoted/3`, 3, {}],
    ['orders', `${first}:quoted/1/2`, 1, {}],
    ['orders', `${first}:quoted/x0,${second}:quoted/on20271399,${third}:quoted/x1e9`, 3, {}],
    ['orders', `${first}:need,${first}:quoted/3`, 1, { purchases: { [first]: { state: 'need' } } }],
    ['shops', 'shop-a:carriage-x,shop-b:duty-2,corner:abroad,shop-c', 3, { sellers: { 'shop-c': {} } }],
    ['money', 'EUR:0', 1, {}],
    ['money', 'EUR:0.9:1', 1, {}],
    ['chances', 'no-such-risk:0.5', 1, {}],
    ['allowance', '1.5', 1, {}],
    ['first-day', '20270230', 1, {}],
    ['families', 'pieces-0/batches-1', 1, {}],
    ['families', 'pieces-30/pieces-30', 1, {}],
  ])('lists what cannot be read and uses the rest: %s=%s', (key, value, count, own) => {
    const { path: read, notes } = decodePath(`${encodePath(path)}&${key}=${value}`);
    expect(notes).toHaveLength(count);
    expect(splitOwn(read)).toEqual({ path, own });
  });

  it('stand in a comparison with the columns they belong to', () => {
    const bought: Path = { ...path, purchases: { [first]: { state: 'quoted', price: '12.50' } } };
    const otherwise: Path = { ...bought, size: 'small' };
    const columns = [path, otherwise].map((each) => ({ kind: 'path' as const, path: each }));
    const read = decodeComparison(encodeComparison(bought, columns, { prices: true }));
    expect(read.notes).toEqual([]);
    expect(read.first).toEqual(bought);
    expect(read.others).toEqual(columns);
  });

  it('use words that are no question, no figure and no other word of the grammar', () => {
    const words = [...priceKeys, ...progressKeys, 'edition', 'size', 'have', 'without', 'alternative'];
    const ids = [...decisions, ...facts].map(({ id }) => id);
    expect(new Set([...words, ...ids]).size).toBe(words.length + ids.length);
  });
});
