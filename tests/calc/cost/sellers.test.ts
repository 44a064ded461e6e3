// Worked by hand from the rules: carriage typed, free or by class; tax by country; duty at the border.
import { describe, expect, test } from 'vitest';
import type { Path } from '../../../src/calc/core/path.ts';
import type { Purchase, Seller } from '../../../src/calc/core/purchase.ts';
import { evaluate, type SellerRow } from '../../../src/calc/evaluate.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';

const bought = (price: string, rest: Partial<Purchase> = {}): Purchase => ({
  state: 'ordered',
  price,
  per: 'line',
  seller: 'shop',
  ...rest,
});

function rowsOf(
  purchases: Record<string, Purchase>,
  shop: Seller,
  rest: Partial<Path> = {},
  country = 'united-states',
): readonly SellerRow[] {
  const path = { ...pathOf({ country }), ...rest, purchases, sellers: { shop } };
  return evaluate(path, currentEdition).sellers;
}

const exact = ({ goods, carriage, tax, duty, total }: SellerRow) => [
  goods,
  carriage.exact,
  tax.exact,
  duty.exact,
  total.exact,
];

describe('one order within the country', () => {
  const tax = { facts: { 'tax-rate': 0.0825 } };

  test('sales tax on goods alone, half up: 34.88 at 8.25 % is 2.88, the textbook example', () => {
    const [row] = rowsOf({ 'motion-card': bought('34.88') }, { freight: '9.90' }, tax);
    expect(exact(row!)).toEqual(['34.88', '9.90', '2.88', '0.00', '47.66']);
  });

  test('where the tax counts carriage: 44.78 at 8.25 % is 3.69', () => {
    const [row] = rowsOf({ 'motion-card': bought('34.88') }, { freight: '9.90', carriageTaxed: true }, tax);
    expect(exact(row!)).toEqual(['34.88', '9.90', '3.69', '0.00', '48.47']);
  });

  test('prices that hold the tax are not taxed again: 467.64 with 35.64 inside, the textbook example', () => {
    const [row] = rowsOf({ 'motion-card': bought('467.64') }, { freight: '0', taxIncluded: true }, tax);
    expect(exact(row!)).toEqual(['467.64', '0.00', '0.00', '0.00', '467.64']);
    expect(row!.taxInside).toBe('35.64');
  });

  test('carriage is free from the limit on, before tax; a cent under it costs', () => {
    const shop = { freight: '12.50', freeFrom: '100' };
    const [under] = rowsOf({ 'motion-card': bought('99.99') }, shop, tax);
    expect([under!.carriage.exact, under!.toFreeCarriage]).toEqual(['12.50', '0.01']);
    const [over] = rowsOf({ 'motion-card': bought('60'), 'used-pc': bought('40') }, shop, tax);
    expect([over!.carriage.exact, over!.toFreeCarriage]).toEqual(['0.00', undefined]);
  });

  test('without a typed carriage: a range by the heaviest thing in the order', () => {
    const light = rowsOf({ 'spare-fuses': bought('8') }, {}, tax)[0]!;
    expect(light.carriage.range).toEqual([0, 4, 8]);
    const heavy = rowsOf({ 'spare-fuses': bought('8'), 'ball-screw-carriage': bought('70') }, {}, tax)[0]!;
    expect(heavy.carriage.range).toEqual([18, 32, 55]);
    expect(heavy.carriage.exact).toBeUndefined();
    expect(heavy.tax.exact).toBeUndefined();
    expect(heavy.total.range).toEqual([78 + 18 + 6.44, 78 + 32 + 6.44, 78 + 55 + 6.44]);
  });

  test('spent and quoted at one shop are two orders', () => {
    const rows = rowsOf(
      { 'motion-card': bought('34.88'), 'used-pc': bought('60', { state: 'quoted' }) },
      { freight: '5' },
      tax,
    );
    expect(rows.map(({ state, goods, carriage }) => [state, goods, carriage.exact])).toEqual([
      ['spent', '34.88', '5.00'],
      ['quoted', '60.00', '5.00'],
    ]);
  });

  test('without a tax rate the tax is a range and not committed', () => {
    const { money, sellers } = evaluate(
      {
        ...pathOf({}),
        purchases: { 'motion-card': bought('200') },
        sellers: { shop: { freight: '10' } },
      },
      currentEdition,
    );
    expect(sellers[0]!.tax.range).toEqual([0, 14, 20]);
    expect(money.committed).toBe('210.00');
  });
});

describe('a parcel from abroad', () => {
  test('duty on goods and carriage, VAT on those and the duty: 80 + 35, duty 3.5 %, VAT 17.5 %', () => {
    const shop = { freight: '35', abroad: true, dutyRate: 0.035 };
    const [row] = rowsOf(
      { 'motion-card': bought('80') },
      shop,
      { facts: { 'tax-rate': 0.175 } },
      'vat-country',
    );
    // 115 × 0.035 = 4.025 → 4.03; (115 + 4.025) × 0.175 = 20.829 → 20.83
    expect(exact(row!)).toEqual(['80.00', '35.00', '20.83', '4.03', '139.86']);
  });

  test('the usual duty stands in where the shop has none of its own', () => {
    const shop = { freight: '0', abroad: true };
    const facts = { 'tax-rate': 0, 'duty-rate': 0.1 };
    const [row] = rowsOf({ 'motion-card': bought('80') }, shop, { facts }, 'vat-country');
    expect(exact(row!)).toEqual(['80.00', '0.00', '0.00', '8.00', '88.00']);
  });
});

describe('currency', () => {
  const currency = { code: 'EUR', perDollar: '0.92' };

  test('a price in the owner’s currency is divided by the rate and rounded once, half up', () => {
    const { bill } = evaluate(
      {
        ...pathOf({}),
        currency,
        purchases: { 'closed-set-57': { state: 'quoted', price: '99.99', qty: 2, currency: 'EUR' } },
      },
      currentEdition,
    );
    const line = bill.once.find(({ part }) => part === 'closed-set-57');
    // 2 × 99.99 ÷ 0.92 = 217.3695… → 217.37
    expect(line?.purchase).toMatchObject({ goods: '217.37', asTyped: '99.99 EUR each', qty: 2 });
  });

  test.each([
    [{ state: 'ordered', price: '50', currency: 'GBP' }, 'currency'],
    [{ state: 'ordered', price: 'fifty' }, 'number'],
    [{ state: 'ordered' }, 'price'],
  ] as const)('%j cannot be counted: our band stands in and %s is asked for', (purchase, asks) => {
    const { bill, money } = evaluate(
      { ...pathOf({}), currency, purchases: { 'motion-card': purchase } },
      currentEdition,
    );
    const line = bill.once.find(({ part }) => part === 'motion-card')!;
    expect(line.purchase?.asks).toBe(asks);
    expect(line.line).toEqual(line.each);
    expect(money.committed).toBe('0.00');
  });
});

test('a price outside of the band counts and is asked about', () => {
  const lineAt = (price: string) =>
    evaluate(
      { ...pathOf({}), purchases: { 'power-cable': { state: 'quoted', price, per: 'unit' } } },
      currentEdition,
    ).bill.once.find(({ part }) => part === 'power-cable')!;
  expect(lineAt('45').purchase?.outsideBand).toBe('above');
  expect(lineAt('0.10').purchase?.outsideBand).toBe('below');
  expect(lineAt('4').purchase?.outsideBand).toBeUndefined();
  expect(lineAt('45').purchase?.goods).toBe('675.00');
});
