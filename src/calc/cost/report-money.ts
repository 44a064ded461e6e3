import type { Band } from '../core/band.ts';
import type { Money } from '../core/money.ts';
import type { BillLine, ReportMoney, SellerRow } from '../report.ts';
import { centText, wholeCents } from './amounts.ts';
import type { Totals } from './builds.ts';
import { meanCents } from './mean-cents.ts';
import { fromBare, moneyParts } from './parts-of-total.ts';
import { exactSum } from './seller-rows.ts';
import { spreadOf } from './spread.ts';

const CENTS = 100;

/** Everything beside what is paid already, in each build: trouble and credits stand apart. */
function stillToBuy({ goods, local, landed }: Totals, committed: Money): Float64Array {
  const paid = wholeCents(committed);
  const left = new Float64Array(goods.length);
  for (let build = 0; build < left.length; build += 1)
    left[build] = goods[build]! + local[build]! + landed[build]! - paid;
  return left;
}

/** The money of a report: the total as a spread, its parts to the cent, and what of it is settled. */
export function reportMoney(
  totals: Totals,
  lines: readonly BillLine[],
  sellers: readonly SellerRow[],
  landedBand: Band,
  allowance: number | undefined,
): ReportMoney {
  const committed = exactSum(sellers, 'spent');
  const bands = moneyParts(lines, totals, landedBand);
  const cents = meanCents(totals, wholeCents(committed));
  return {
    ...spreadOf(totals.money, CENTS),
    parts: { ...bands, cents, fromBare: fromBare(bands, cents) },
    committed: centText(committed),
    quoted: centText(exactSum(sellers, 'quoted')),
    stillToBuy: spreadOf(stillToBuy(totals, committed), CENTS),
    trouble: spreadOf(totals.troubleMoney, CENTS),
    troubleBy: allowance === undefined ? 'risks' : 'allowance',
  };
}
