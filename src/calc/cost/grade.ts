import type { Status } from '../choices/choose.ts';
import { decisionPosition } from '../choices/state.ts';
import { pertMean } from '../core/band.ts';
import { decisionsIn } from '../core/condition.ts';
import { dollars } from '../core/money.ts';
import type { BillLine, Grade, ReportMoney } from '../report.ts';
import { parts } from '../trade.ts';
import { classOf, type EstimateClass } from './grade-table.ts';

/**
 * How much of a job counts as defined where its questions are answered but nothing is priced by a shop: the upper end
 * of a study. Judgement, no source.
 */
const ANSWERED = 0.15;

const asks: ReadonlyMap<string, readonly number[]> = new Map(
  parts.map((part) => [
    part.id,
    [...new Set(part.needs.flatMap(({ when }) => decisionsIn(when)))].map(decisionPosition),
  ]),
);

/** Every question that the line hangs on is answered, or does not arise. */
const isSettled = ({ part }: BillLine, status: readonly Status[]): boolean =>
  asks.get(part)!.every((at) => status[at] === 'answered' || status[at] === 'not-asked');

/** Mean dollars of a line at planning prices: what no quote or order covers. */
const unpriced = ({ line, purchase }: BillLine): number => pertMean(line) - Number(purchase?.goods ?? 0);

function sharesOf(
  money: ReportMoney,
  lines: readonly BillLine[],
  status: readonly Status[],
): Grade['shares'] {
  const { cents } = money.parts;
  const whole = dollars(cents.total - cents.credit)
    .div(100)
    .toNumber();
  if (whole <= 0) return { spent: 0, quoted: 0, settled: 0, assumed: 1 };
  const spent = Math.min(1, Number(money.committed) / whole);
  const quoted = Math.min(1 - spent, Number(money.quoted) / whole);
  const bought = lines.filter((line) => !line.credit && !line.yearly && isSettled(line, status));
  const answered = bought.reduce((sum, line) => sum + Math.max(0, unpriced(line)), 0);
  const settled = Math.min(1 - spent - quoted, answered / whole);
  return { spent, quoted, settled, assumed: 1 - spent - quoted - settled };
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const signed = (share: number): string => `${share > 0 ? '+' : '−'}${Math.abs(Math.round(share * 100))} %`;

function basisOf(
  shares: Grade['shares'],
  { low, high, use, ...row }: EstimateClass,
  ours: Grade['ours'],
): string[] {
  return [
    `${percent(shares.spent)} of the typical total is paid or ordered, ${percent(shares.quoted)} is quoted by a shop.`,
    `${percent(shares.settled)} stands on planning prices for lines whose questions you have answered; ${percent(shares.assumed)} is assumed: open questions, freight, tax and duty not yet quoted, and what goes wrong.`,
    `In the terms of published cost-estimating practice that is a class ${row.class} estimate, good for ${use}. Such an estimate is expected to miss by between ${signed(low[1])} and ${signed(low[0])} on the cheap side and between ${signed(high[0])} and ${signed(high[1])} on the dear side.`,
    `Sixteen of 20 of our builds lie between ${signed(ours.low)} and ${signed(ours.high)} of the middle. The classes were made for large plants; a small job swings at least as much.`,
  ];
}

/** How far the estimate is defined, from the shares of the total that are paid, quoted, answered and assumed. */
export function gradeOf(money: ReportMoney, lines: readonly BillLine[], status: readonly Status[]): Grade {
  const shares = sharesOf(money, lines, status);
  const found = classOf(shares.spent + shares.quoted + ANSWERED * shares.settled);
  const about = (value: number): number => (money.p50 > 0 ? value / money.p50 - 1 : 0);
  const ours = { low: about(money.p10), high: about(money.p90) };
  const expected = { low: found.low, high: found.high };
  return { class: found.class, shares, expected, ours, basis: basisOf(shares, found, ours) };
}
