// A list of sixty lines, twenty of them quoted or bought: every total against the sum of its lines.
import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import type { Path } from '../../../src/calc/core/path.ts';
import type { Purchase } from '../../../src/calc/core/purchase.ts';
import { largestRemainder } from '../../../src/calc/cost/mean-cents.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf, referencePaths } from '../../../src/content/reference-paths.ts';

const plain = pathOf({}, 'medium', { facts: { 'tax-rate': 0.0825, 'duty-rate': 0.04 } });
const lines = evaluate(plain, currentEdition).bill.once;
const states = ['quoted', 'ordered', 'arrived', 'checked'] as const;

const purchases = Object.fromEntries(
  lines.slice(0, 20).map(({ part, each }, at): [string, Purchase] => [
    part,
    {
      state: states[at % 4]!,
      price: new Decimal(each[1]).times(1.037).plus(0.005).toFixed(3),
      seller: ['near', 'far', 'third'][at % 3]!,
    },
  ]),
);
const path: Path = {
  ...plain,
  purchases,
  sellers: {
    near: { freight: '14.95', freeFrom: '150', carriageTaxed: true },
    far: { freight: '39.50', abroad: true, dutyRate: 0.077 },
    third: { freight: '6.10', taxIncluded: true },
  },
};
const report = evaluate(path, currentEdition);
const sum = (texts: readonly (string | undefined)[]): string =>
  texts.reduce((all, text) => all.plus(text!), new Decimal(0)).toFixed(2);

describe('sixty lines with twenty quotes', () => {
  test('there are sixty lines and more, and twenty are priced', () => {
    expect(report.bill.once.length).toBeGreaterThanOrEqual(60);
    expect(report.bill.once.filter(({ purchase }) => purchase?.goods).length).toBe(20);
  });

  test('goods of a shop are the sum of its printed lines; its total the sum of its charges', () => {
    const goodsOf = new Map(report.bill.once.map(({ part, purchase }) => [part, purchase?.goods]));
    expect(report.sellers.length).toBe(6);
    for (const { lines: ids, goods, carriage, tax, duty, total } of report.sellers) {
      expect(sum(ids.map((id) => goodsOf.get(id)))).toBe(goods);
      expect(sum([goods, carriage.exact, tax.exact, duty.exact])).toBe(total.exact);
    }
  });

  test('committed and quoted money are the sums of the orders', () => {
    const of = (state: 'spent' | 'quoted') =>
      sum(report.sellers.filter((row) => row.state === state).map(({ total }) => total.exact));
    expect(report.money.committed).toBe(of('spent'));
    expect(report.money.quoted).toBe(of('quoted'));
  });

  test('the parts of the mean add up to the cent, and so do committed money and the rest', () => {
    const { goods, landed, trouble, credit, total, committed, stillToBuy } = report.money.parts.cents;
    expect(goods + landed + trouble + credit).toBe(total);
    expect(committed + stillToBuy + trouble + credit).toBe(total);
    expect((committed / 100).toFixed(2)).toBe(report.money.committed);
  });

  test('the more is priced, the narrower the range and the better the class', () => {
    const all = Object.fromEntries(
      lines.map(({ part, each }) => [
        part,
        { state: 'ordered', price: String(each[1]), seller: 'near' } as const,
      ]),
    );
    const every = evaluate({ ...path, purchases: all }, currentEdition);
    const none = evaluate(plain, currentEdition);
    const width = ({ money }: typeof report): number => money.p90 - money.p10;
    expect(width(report)).toBeLessThan(width(none));
    expect(width(every)).toBeLessThan(width(report));
    expect(every.grade.class).toBeLessThan(report.grade.class);
    expect(report.grade.class).toBeLessThanOrEqual(none.grade.class);
    // Everything is bought: only trouble still spreads.
    expect(every.money.stillToBuy.p90 - every.money.stillToBuy.p10).toBeCloseTo(0, 9);
  });
});

describe('states', () => {
  const cardLine = (purchase?: Purchase, owned: string[] = []) =>
    evaluate(
      { ...plain, owned, ...(purchase ? { purchases: { 'motion-card': purchase } } : {}) },
      currentEdition,
    ).bill.once.find(({ part }) => part === 'motion-card')!;

  test('a thing sent back is needed again, at our band', () => {
    const back = cardLine({ state: 'returned', price: '200' });
    expect([back.state, back.packs, back.line]).toEqual(['returned', 1, cardLine().line]);
    expect(back.purchase).toBeUndefined();
  });

  test('half a quantity leaves the other half as a range', () => {
    const sets = evaluate(
      { ...plain, purchases: { 'closed-set-57': { state: 'arrived', price: '120', qty: 1 } } },
      currentEdition,
    ).bill.once.find(({ part }) => part === 'closed-set-57')!;
    expect(sets.qty).toBe(2);
    expect(sets.purchase?.stillNeeded).toBe(1);
    expect(sets.line).toEqual(sets.each.map((dollars) => dollars + 120));
  });

  test('what is owned costs nothing, and money spent on it before stays spent', () => {
    expect(cardLine(undefined, ['motion-card']).line).toEqual([0, 0, 0]);
    const both = cardLine({ state: 'checked', price: '190' }, ['motion-card']);
    expect([both.state, both.line]).toEqual(['have', [190, 190, 190]]);
  });

  test('what was bought stays listed when the plan no longer asks for it', () => {
    const other = referencePaths.find(({ id }) => id === 'standalone')!.path;
    const { bill, money } = evaluate(
      { ...other, purchases: { 'motion-card': { state: 'arrived', price: '210' } } },
      currentEdition,
    );
    const line = bill.once.find(({ part }) => part === 'motion-card')!;
    expect([line.qty, line.line, line.leftOver]).toEqual([0, [210, 210, 210], 1]);
    expect(money.committed).toBe('210.00');
  });
});

test('largest remainder: whole numbers that add up to the rounded sum, none off by one or more', () => {
  expect(largestRemainder([0.5, 0.25, 0.25])).toEqual([1, 0, 0]);
  expect(largestRemainder([33.4, 33.3, 33.3])).toEqual([34, 33, 33]);
  expect(largestRemainder([10.7, -2.4, 0])).toEqual([11, -3, 0]);
});
