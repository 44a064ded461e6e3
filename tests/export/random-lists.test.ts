import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Path } from '../../src/calc/core/path.ts';
import type { Purchase } from '../../src/calc/core/purchase.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { buyListCsv } from '../../src/export/buy-files.ts';
import { type BuyList, buyList } from '../../src/export/buy-list.ts';
import { readQuotes } from '../../src/export/read-csv.ts';
import { bigPath, bigReport } from './big-list.ts';
import { anyOwn, aPurchase } from './own.ts';

const listOf = (path: Path): BuyList => buyList(evaluate(path, currentEdition));
const ends = ['low', 'likely', 'high'] as const;
const sum = (amounts: readonly string[]) =>
  amounts.reduce((total, amount) => total.plus(amount), new Decimal(0)).toFixed(2);

test('whatever is typed, every total is the sum of its printed parts', () => {
  fc.assert(
    fc.property(anyOwn, (own) => {
      const { rows, totals, orders, average } = listOf({ ...bigPath, ...own });
      for (const total of totals)
        for (const end of ends)
          expect(total[end]).toBe(
            sum(rows.filter(({ paid }) => paid === total.paid).map(({ line }) => line[end])),
          );
      for (const { goods, carriage, tax, duty, total } of orders)
        for (const end of ends) expect(total[end]).toBe(sum([goods, carriage[end], tax[end], duty[end]]));
      expect(average.total).toBe(sum(average.parts.map(({ amount }) => amount)));
    }),
    { numRuns: 40 },
  );
}, 300_000);

/** As a list of quotes can say it: spaces around words gone, empty words left out, what a price is in said in full. */
function asListed({ price, per, currency, ...others }: Purchase): Purchase {
  const words = Object.entries(others).flatMap(([field, value]): [string, unknown][] => {
    const tidy = typeof value === 'string' ? value.trim() : value;
    return tidy === '' || tidy === undefined ? [] : [[field, tidy]];
  });
  const money = price === undefined ? {} : { price, per: per ?? 'unit', currency: currency ?? 'USD' };
  return { ...(Object.fromEntries(words) as unknown as Purchase), ...money };
}

const priced = bigReport.bill.once.filter(({ owned }) => !owned).map(({ part }) => part);
const somePurchases = fc.dictionary(fc.constantFrom(...priced), aPurchase, {
  maxKeys: 30,
  noNullPrototype: true,
});

/** One list is worked out; the purchases of its rows are what varies. */
const withPurchases = (purchases: Readonly<Record<string, Purchase>>): BuyList => {
  const once = bigReport.bill.once.map((line) =>
    line.owned ? line : { ...line, state: purchases[line.part]?.state ?? ('need' as const) },
  );
  return buyList({ ...bigReport, bill: { ...bigReport.bill, once }, path: { ...bigReport.path, purchases } });
};

test('1,000 random lists written as CSV propose the same purchases when read', () => {
  const wanted = bigReport.bill.once.map(({ part }) => part);
  fc.assert(
    fc.property(somePurchases, fc.constantFrom(',', ';', '\t'), (purchases, separator) => {
      const csv = buyListCsv(withPurchases(purchases), { separator: separator as ',' });
      const { matched, unmatched } = readQuotes(csv, { wanted, currency: 'USD' });
      expect(unmatched).toEqual([]);
      const back = Object.fromEntries(matched.map(({ part, purchase }) => [part, purchase]));
      const told = Object.entries(purchases).filter(
        ([, { price, state }]) => price !== undefined || state !== 'need',
      );
      expect(back).toEqual(Object.fromEntries(told.map(([part, purchase]) => [part, asListed(purchase)])));
    }),
    { numRuns: 1000 },
  );
}, 300_000);
