import { Decimal } from 'decimal.js';
import type { Money } from '../core/money.ts';
import { consumerPrices } from '../formulas/price-index.ts';
import { escalate } from '../formulas/prices.ts';
import { amountOf, centText, toTheCent } from './amounts.ts';

/** "I saw this part at so much in that year." The amount is decimal text in US dollars. */
export interface OldPrice {
  readonly amount: string;
  readonly year: number;
  /** Year of the edition. The list of prices may end before it. */
  readonly toYear: number;
}

/** An old price in today's money with a band about it, or why it cannot be carried. */
export type Carried =
  | {
      readonly ok: true;
      /** Dollars to the cent, decimal text. */
      readonly low: string;
      readonly likely: string;
      readonly high: string;
      /** Year the sum was carried to: the last one of the list where the edition is later. */
      readonly toYear: number;
      /** The band to either side, fraction of one. */
      readonly spread: number;
      /** Sentences: how it was carried, and what the list cannot know. */
      readonly limits: readonly string[];
    }
  | { readonly ok: false; readonly say: string };

/** A tenth to either side, and a fiftieth more for every year; common practice, no source. */
const SPREAD = 0.1;
const SPREAD_A_YEAR = 0.02;

const years = Object.keys(consumerPrices.byYear).map(Number);
const first = Math.min(...years);
const last = Math.max(...years);

const refuse = (say: string): Carried => ({ ok: false, say });

/** Carries an old price by the list of consumer prices, with a band that widens with its age. Refuses what it cannot know. */
export function carryForward({ amount, year, toYear }: OldPrice): Carried {
  const money = amountOf(amount);
  if (!money) return refuse('Type the price in digits, with a point for the cents: 149.90.');
  const then = consumerPrices.byYear[year];
  if (then === undefined)
    return refuse(`The list of consumer prices runs from ${first} to ${last}; ${year} is not in it.`);
  if (!Number.isInteger(toYear) || toYear < year)
    return refuse(`A price of ${year} cannot be carried back to ${toYear}.`);
  const to = Math.min(toYear, last);
  return carried(money, year, to, toYear, then, consumerPrices.byYear[to]!);
}

function carried(
  money: Money,
  year: number,
  to: number,
  wanted: number,
  indexThen: number,
  indexNow: number,
): Carried {
  const likely = escalate.compute({ amount: money, indexThen, indexNow });
  const spread = new Decimal(SPREAD).plus(new Decimal(SPREAD_A_YEAR).times(wanted - year));
  const at = (share: Decimal): string => centText(toTheCent(likely.times(share)));
  const one = new Decimal(1);
  return {
    ok: true,
    low: at(one.minus(spread)),
    likely: at(one),
    high: at(one.plus(spread)),
    toYear: to,
    spread: spread.toNumber(),
    limits: limitsOf(year, to, wanted, spread),
  };
}

const limitsOf = (year: number, to: number, wanted: number, spread: Decimal): string[] => [
  `Carried from ${year} to ${to} by consumer prices in the United States (${consumerPrices.source.ref}).`,
  ...(to < wanted ? [`The list ends in ${to}; what happened since is in the band only.`] : []),
  'That list is a household basket. Electronics fell in price while steel and freight rose, so a drive may be cheaper today and a screw dearer.',
  `The band of ${spread.times(100).toFixed(0)} % to either side widens with age; common practice, no source.`,
];
