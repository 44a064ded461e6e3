import { Decimal } from 'decimal.js';
import type { Charge, Report } from '../calc/report.ts';
import { type AmountRange, rangeOf } from './amounts.ts';

/** One order at one shop, dollars as decimal text to the cent; goods and the three charges add up to the total at each end. */
export interface OrderRow {
  /** As the owner named it; empty for lines without a shop. */
  readonly seller: string;
  readonly state: 'spent' | 'quoted';
  readonly lines: number;
  readonly goods: string;
  readonly carriage: AmountRange;
  readonly tax: AmountRange;
  readonly duty: AmountRange;
  readonly total: AmountRange;
}

/** A part of the mean of the whole total, dollars as decimal text to the cent; below zero for what comes back. */
export interface TotalPart {
  readonly key: 'goods' | 'landed' | 'trouble' | 'credit';
  readonly name: string;
  readonly amount: string;
}

const chargeRange = ({ exact, range }: Charge): AmountRange =>
  exact === undefined ? rangeOf(range) : { low: exact, likely: exact, high: exact };

/** The orders of a report, one row each. */
export const orderRows = ({ sellers }: Pick<Report, 'sellers'>): OrderRow[] =>
  sellers.map(({ seller, state, lines, goods, carriage, tax, duty, total }) => ({
    ...{ seller, state, goods },
    lines: lines.length,
    carriage: chargeRange(carriage),
    tax: chargeRange(tax),
    duty: chargeRange(duty),
    total: chargeRange(total),
  }));

const dollarsOf = (cents: number): string => new Decimal(cents).div(100).toFixed(2);

/** What the whole comes to on average over the builds, and its parts, which add up to it exactly. */
export function totalParts({ money }: Pick<Report, 'money'>): { parts: readonly TotalPart[]; total: string } {
  const { goods, landed, trouble, credit, total } = money.parts.cents;
  const troubleName = money.troubleBy === 'risks' ? 'What goes wrong' : 'Allowance for what goes wrong';
  return {
    parts: [
      { key: 'goods', name: 'Goods', amount: dollarsOf(goods) },
      { key: 'landed', name: 'Freight, tax and duty', amount: dollarsOf(landed) },
      { key: 'trouble', name: troubleName, amount: dollarsOf(trouble) },
      { key: 'credit', name: 'Comes back from what is sold', amount: dollarsOf(credit) },
    ],
    total: dollarsOf(total),
  };
}
