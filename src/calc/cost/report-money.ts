import type { Band } from '../core/band.ts';
import type { Money } from '../core/money.ts';
import type { BillLine, ReportMoney, SellerRow } from '../report.ts';
import { centText, wholeCents } from './amounts.ts';
import type { Totals } from './builds.ts';
import { meanCents } from './mean-cents.ts';
import { moneyParts } from './parts-of-total.ts';
import { exactSum } from './seller-rows.ts';
import { spreadOf } from './spread.ts';

const CENTS = 100;

/** Everything beside what is paid already, in each build: trouble and credits stand apart. */
const stillToBuy = ({ goods, local, landed }: Totals, committed: Money): Float64Array => {
  const paid = wholeCents(committed);
  return goods.map((cents, build) => cents + local[build]! + landed[build]! - paid);
};

/** The money of a report: the total as a spread, its parts to the cent, and what of it is settled. */
export function reportMoney(
  totals: Totals,
  lines: readonly BillLine[],
  sellers: readonly SellerRow[],
  landedBand: Band,
  allowance: number | undefined,
): ReportMoney {
  const committed = exactSum(sellers, 'spent');
  return {
    ...spreadOf(totals.money, CENTS),
    parts: {
      ...moneyParts(lines, totals, landedBand),
      cents: meanCents(totals, wholeCents(committed)),
    },
    committed: centText(committed),
    quoted: centText(exactSum(sellers, 'quoted')),
    stillToBuy: spreadOf(stillToBuy(totals, committed), CENTS),
    trouble: spreadOf(totals.troubleMoney, CENTS),
    troubleBy: allowance === undefined ? 'risks' : 'allowance',
  };
}
