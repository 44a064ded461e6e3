import type { Band } from './core/band.ts';

/** A sum that is known to the cent, or a planning range in dollars; `how` says in words where it comes from. */
export interface Charge {
  /** Decimal text, dollars to the cent; missing where only a range is known. */
  readonly exact?: string;
  readonly range: Band;
  readonly how: string;
}

/** One order at one shop: what is spent and what is only quoted are two orders. Money to the cent; parts add up. */
export interface SellerRow {
  /** Name as the owner gave it; empty for lines without a seller, whose freight, tax and duty stay a planning share. */
  readonly seller: string;
  readonly state: 'spent' | 'quoted';
  /** Part ids. */
  readonly lines: readonly string[];
  /** Decimal text, sum of the printed lines. */
  readonly goods: string;
  readonly carriage: Charge;
  readonly tax: Charge;
  readonly duty: Charge;
  /** Goods and charges together. */
  readonly total: Charge;
  /** Tax that the prices already hold, decimal text; only where it is so and the rate is known. */
  readonly taxInside?: string;
  /** Goods still missing until carriage is free, decimal text; only where the shop has such a limit and it is not met. */
  readonly toFreeCarriage?: string;
}

/** How far the estimate is defined, in the terms of published cost-estimating practice. */
export interface Grade {
  /** AACE International 18R-97: 5 is a first idea, 1 is priced line by line. */
  readonly class: 1 | 2 | 3 | 4 | 5;
  /** Shares of the mean total, fractions of one; they add up to one. */
  readonly shares: {
    readonly spent: number;
    readonly quoted: number;
    /** Planning prices of lines whose questions and figures are answered. */
    readonly settled: number;
    readonly assumed: number;
  };
  /** Range that the class expects about the estimate, fractions: [-0.5, -0.2] and [0.3, 1]. */
  readonly expected: {
    readonly low: readonly [number, number];
    readonly high: readonly [number, number];
  };
  /** Where sixteen of 20 of our builds lie about the middle, fractions. */
  readonly ours: { readonly low: number; readonly high: number };
  /** Sentences: what is defined, what is assumed, the class, its range against ours. */
  readonly basis: readonly string[];
}

/** How a total spreads over the builds. Money in dollars, time in hours or weeks. */
export interface Spread {
  readonly p10: number;
  readonly p25: number;
  readonly p50: number;
  readonly p75: number;
  readonly p80: number;
  readonly p90: number;
  /** Twenty equally likely outcomes, in order. */
  readonly twenty: readonly number[];
  readonly mean: number;
}

/** What the total is made of: sums of lines before freight, and the typical share of each in the builds. */
export interface MoneyParts {
  readonly goods: Band;
  /** Goods that people count when they say what "the parts" cost: no shop tools, no trouble, no freight. */
  readonly bareParts: Band;
  /** Taken off again: what selling the old parts brings. */
  readonly credits: Band;
  readonly landedRate: Band;
  /** Mean dollars over the builds; they add up to the mean of the total. */
  readonly meanGoods: number;
  readonly meanLanded: number;
  readonly meanTrouble: number;
  /** At or below zero. */
  readonly meanCredit: number;
  /**
   * The same means in whole cents, by largest remainder: goods + landed + trouble + credit = total, and
   * committed + stillToBuy + trouble + credit = total. These are the figures to print.
   */
  readonly cents: {
    readonly goods: number;
    readonly landed: number;
    readonly trouble: number;
    readonly credit: number;
    readonly total: number;
    readonly committed: number;
    readonly stillToBuy: number;
  };
  /** From the bare parts that people quote to the mean of everything, step by step; whole cents that add up to the total. */
  readonly fromBare: readonly { readonly name: string; readonly cents: number }[];
}

/** Money of the report: the whole total as a spread, and how much of it is settled. */
export interface ReportMoney extends Spread {
  readonly parts: MoneyParts;
  /** Paid or ordered, to the cent: goods, carriage, tax and duty as far as they are known exactly. Decimal text. */
  readonly committed: string;
  /** The same for what is quoted and not ordered. Decimal text. */
  readonly quoted: string;
  /** Everything beside the committed money, trouble and credits apart. */
  readonly stillToBuy: Spread;
  /** Money for what goes wrong, or the flat allowance in its place. */
  readonly trouble: Spread;
  /** Which of the two stands in the totals; never both. */
  readonly troubleBy: 'risks' | 'allowance';
}
