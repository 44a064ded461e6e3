import type { Band } from '../core/band.ts';
import { scaleBand } from '../core/band.ts';
import { toCents } from '../core/money.ts';
import type { BillLine, MoneyParts } from '../report.ts';
import type { Totals } from './builds.ts';
import { sumOf } from './exact-sums.ts';
import { mean } from './spread.ts';

const signed = (line: BillLine): Band => (line.credit ? scaleBand(line.line, -1) : line.line);

/** What the total is made of: sums of lines as bands, and means over the builds that add up to the mean of the total. */
export function moneyParts(
  lines: readonly BillLine[],
  totals: Totals,
  landedRate: Band,
): Omit<MoneyParts, 'cents' | 'fromBare'> {
  const once = lines.filter((line) => !line.yearly);
  const goods = once.filter((line) => !line.credit);
  const meanCredit = sumOf(once.filter((line) => line.credit).map((line) => line.line));
  return {
    goods: sumOf(goods.map((line) => line.line)),
    bareParts: sumOf(goods.filter((line) => !line.shopTool).map((line) => line.line)),
    credits: meanCredit,
    landedRate,
    meanGoods: (mean(totals.goods) + mean(totals.local)) / 100,
    meanLanded: mean(totals.landed) / 100,
    meanTrouble: mean(totals.troubleMoney) / 100,
    meanCredit: mean(totals.credits) / 100,
  };
}

/** What lies between bare parts and the whole, in words; steps of nothing are left out, and the rest adds up to the total. */
export function fromBare(
  { goods, bareParts }: Pick<MoneyParts, 'goods' | 'bareParts'>,
  cents: MoneyParts['cents'],
): MoneyParts['fromBare'] {
  const bare = toCents(bareParts[1]);
  const all = toCents(goods[1]);
  const steps = [
    { name: 'Bare parts at their likely prices', cents: bare },
    { name: 'Shop tools that you do not have', cents: all - bare },
    {
      name: 'Prices lean to the dear side, and what is still open asks for more or less',
      cents: cents.goods - all,
    },
    { name: 'Freight, tax and duty', cents: cents.landed },
    { name: 'What goes wrong', cents: cents.trouble },
    { name: 'Old parts sold', cents: cents.credit },
  ];
  return steps.filter((step, at) => at === 0 || step.cents !== 0);
}

/** What has to be paid again every year; kept apart from money that is paid once. */
export const yearlyBand = (lines: readonly BillLine[]): Band =>
  sumOf(lines.filter((line) => line.yearly).map(signed));
