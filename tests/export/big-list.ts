// An invented owner with a list of sixty lines or more, of which twenty are quoted, ordered or in the house.
import type { Path } from '../../src/calc/core/path.ts';
import { type Purchase, purchaseStates } from '../../src/calc/core/purchase.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { inventedOwners } from '../../src/content/invented-owners.ts';

const sellers = ['Corner hardware', '=SUM(A1:A9)', 'Träger & Söhne "West"'];

/** The nth quote: odd cents, a third of a dollar, all units of pricing, text that a spreadsheet would run. */
const quote = (at: number): Purchase => ({
  state: purchaseStates[1 + (at % 4)]!,
  price: ['12.35', '0.3333', '199.99', '7', '1.005'][at % 5]!,
  per: (['unit', 'pack', 'line'] as const)[at % 3]!,
  currency: at % 4 === 0 ? 'EUR' : 'USD',
  qty: 1 + (at % 7),
  date: `2026-11-${String(1 + at).padStart(2, '0')}`,
  seller: sellers[at % 3]!,
  ...(at % 2
    ? {
        note: ['+49 30 1234', '-2+3 cmd', '@home, "blue"; one\nsecond line', "'tis"][Math.floor(at / 2) % 4]!,
      }
    : {}),
});

const longest = inventedOwners
  .map(({ path }) => evaluate(path, currentEdition))
  .toSorted((a, b) => b.bill.once.length - a.bill.once.length)[0]!;
const buyable = longest.bill.once.filter(({ owned, credit }) => !owned && !credit).slice(0, 20);

export const bigPath: Path = {
  ...longest.path,
  purchases: Object.fromEntries(buyable.map(({ part }, at) => [part, quote(at)])),
  sellers: Object.fromEntries(sellers.map((name) => [name, {}])),
  currency: { code: 'EUR', perDollar: '0.92' },
  start: '2027-02-01',
};
export const bigReport = evaluate(bigPath, currentEdition);
