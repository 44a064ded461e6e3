import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Path } from '../../../src/calc/core/path.ts';
import type { PriceBook } from '../../../src/calc/core/price-book.ts';
import { editionOf } from '../../../src/calc/cost/edition.ts';
import { ordersOf } from '../../../src/calc/cost/orders.ts';
import { exactSum, sellerRows } from '../../../src/calc/cost/seller-rows.ts';
import { shopOrders } from '../../../src/calc/cost/shop-orders.ts';
import { totalsOf } from '../../../src/calc/cost/totals.ts';
import { wantedOf } from '../../../src/calc/cost/wanted.ts';
import { planState, waysOf } from '../../../src/calc/cost/ways.ts';
import { evaluate, type Report, type SellerRow } from '../../../src/calc/evaluate.ts';
import { machineOf } from '../../../src/calc/facts.ts';
import { editions } from '../../../src/content/edition.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { cases, quickly } from '../../cases.ts';
import { boughtOn } from '../../purchases.ts';

const book = editions[0]!;
const planned = referencePaths.map(({ path }) => {
  const on = { ...path, edition: book.edition };
  return { path: on, lines: evaluate(on, book).bill.once.map(({ part }) => part) };
});
const anyBought = fc.constantFrom(...planned).chain(({ path, lines }) => boughtOn(path, lines));

/** The cheapest of its builds, and the money it has committed, in cents. */
function leastAndCommitted(path: Path, at: PriceBook): { least: number; committed: number } {
  const machine = machineOf(path.size, path.facts);
  const edition = editionOf(at);
  const plan = planState(path, machine);
  const orders = ordersOf(wantedOf(plan.state, machine, edition.book), path, edition);
  const { money, credits } = totalsOf(waysOf(path, plan, at.seed), machine, path, edition, orders);
  let least = Number.POSITIVE_INFINITY;
  for (let build = 0; build < money.length; build += 1)
    least = Math.min(least, money[build]! - credits[build]!);
  const rows = sellerRows(
    shopOrders(orders, () => false, plan.state, path, at),
    [0, 0, 0],
    at,
  );
  return { least, committed: exactSum(rows, 'spent').times(100).toNumber() };
}

const exactOf = ({ goods, carriage, tax, duty }: SellerRow): Decimal =>
  [goods, carriage.exact, tax.exact, duty.exact].reduce<Decimal>(
    (sum, each) => sum.plus(each ?? 0),
    new Decimal(0),
  );

/** Sums of the report against the sums of what it lists. */
function checkSums({ money, sellers, bill }: Report): void {
  const { goods, landed, trouble, credit, total, committed, stillToBuy } = money.parts.cents;
  expect(goods + landed + trouble + credit).toBe(total);
  expect(committed + stillToBuy + trouble + credit).toBe(total);
  expect(money.parts.fromBare.reduce((sum, { cents }) => sum + cents, 0)).toBe(total);
  expect(Math.abs(total / 100 - money.mean)).toBeLessThan(0.0051);
  for (const state of ['spent', 'quoted'] as const) {
    const rows = sellers.filter((row) => row.state === state);
    const sum = rows.reduce((all, row) => all.plus(exactOf(row)), new Decimal(0));
    expect(sum.toFixed(2)).toBe(state === 'spent' ? money.committed : money.quoted);
  }
  for (const row of sellers) {
    const lines = bill.once.filter(({ part }) => row.lines.includes(part));
    expect(lines.length).toBe(row.lines.length);
    const sum = lines.reduce((all, { purchase }) => all.plus(purchase!.goods!), new Decimal(0));
    expect(sum.toFixed(2)).toBe(row.goods);
    if (row.total.exact) expect(exactOf(row).toFixed(2)).toBe(row.total.exact);
  }
}

function checkQuantities({ bill }: Report): void {
  for (const line of [...bill.once, ...bill.perYear]) {
    expect(line.toHave, line.part).toBe(line.qty + line.keep.count);
    const bought = line.packs * line.pack + (line.owned ? line.toHave : (line.purchase?.qty ?? 0));
    expect(bought, line.part).toBeGreaterThanOrEqual(line.toHave - 1e-9);
    expect(line.leftOver, line.part).toBeCloseTo(Math.max(0, bought - line.toHave), 6);
  }
}

describe('random purchases', () => {
  test('random sets: no build is cheaper than the committed money, once what is sold again is left out', () => {
    fc.assert(
      fc.property(anyBought, (path) => {
        const { least, committed } = leastAndCommitted(path, book);
        expect(least).toBeGreaterThanOrEqual(committed);
      }),
      { numRuns: cases(3_000, 10_000), seed: 11 },
    );
  }, 400_000);

  test('every total is the sum of its lines, and no quantity is below the need', () => {
    fc.assert(
      fc.property(anyBought, (path) => {
        const report = evaluate(path, book);
        checkSums(report);
        checkQuantities(report);
        expect(JSON.parse(JSON.stringify(report))).toEqual(report);
      }),
      { numRuns: quickly(300), seed: 3 },
    );
  }, 300_000);
});
