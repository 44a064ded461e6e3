import type { Formula } from '../core/formula.ts';

const accounting = 'OpenStax Principles of Accounting, Volume 2: Managerial Accounting';

/** Pieces from which an extra set-up pays: what it costs once over what each piece saves; both money or both hours. */
export const breakEvenPieces: Formula<{ once: number; savedPerPiece: number }> = {
  id: 'break-even-pieces',
  label: 'Pieces from which it pays',
  equation: 'pieces = once ÷ savedPerPiece',
  tex: 'Q = \\frac{F}{p - v}',
  inputs: { once: '$', savedPerPiece: '$' },
  unit: '1',
  source: { ref: accounting, at: 'break-even analysis, fixed cost over contribution margin' },
  valid: {},
  compute: ({ once, savedPerPiece }) => (savedPerPiece > 0 ? once / savedPerPiece : Number.NaN),
};

/**
 * Years until the money is back, without interest; straight within a year. The last entry of `yearly` goes on for
 * ever. NaN where it never comes back.
 */
export const paybackYears: Formula<{ cost: number; yearly: readonly number[] }> = {
  id: 'payback-years',
  label: 'Years until the money is back',
  equation: 'years in which the sum of yearly reaches cost',
  tex: 'n = \\frac{C}{c}',
  inputs: { cost: '$', yearly: '$' },
  unit: 'year',
  source: { ref: accounting, at: 'payback method, even and uneven flows' },
  valid: {},
  compute: ({ cost, yearly }) => {
    let owed = cost;
    if (owed <= 0) return 0;
    for (const [year, flow] of yearly.entries()) {
      if (flow >= owed) return year + owed / flow;
      owed -= flow;
    }
    const last = yearly.at(-1) ?? 0;
    return last > 0 ? yearly.length + owed / last : Number.NaN;
  },
};

/** Worth today of sums to come; the first entry is paid now, the next after a year, and so on. `rate` is a fraction. */
export const presentValue: Formula<{ flows: readonly number[]; rate: number }> = {
  id: 'present-value',
  label: 'Worth in today’s money',
  equation: 'value = sum of flow of year n ÷ (1 + rate)ⁿ, from year 0',
  tex: 'V = \\sum_{n} \\frac{c_n}{(1 + r)^n}',
  inputs: { flows: '$', rate: '1' },
  unit: '$',
  source: { ref: accounting, at: 'net present value' },
  valid: { rate: [0, 0.5] },
  compute: ({ flows, rate }) => flows.reduceRight((later, flow) => flow + later / (1 + rate), 0),
};

/** Highest rate looked at: a thousand per cent a year. */
const TOP_RATE = 10;
const LOWEST_RATE = -0.99;

/**
 * Yearly interest at which the present value comes to nothing, a fraction; for money out first and in later, which
 * changes sign once. NaN where there is none between −99 % and 1,000 %.
 */
export const internalRate: Formula<{ flows: readonly number[] }> = {
  id: 'internal-rate',
  label: 'Interest that the money earns',
  equation: 'rate at which the present value of flows is 0',
  tex: '\\sum_{n} \\frac{c_n}{(1 + r)^n} = 0',
  inputs: { flows: '$' },
  unit: '1',
  source: { ref: accounting, at: 'internal rate of return' },
  valid: {},
  compute: ({ flows }) => {
    const worth = (rate: number) => presentValue.compute({ flows, rate });
    let low = LOWEST_RATE;
    let high = TOP_RATE;
    if (!(worth(low) > 0 && worth(high) < 0)) return Number.NaN;
    for (let step = 0; step < 60; step += 1) {
      const middle = (low + high) / 2;
      if (worth(middle) > 0) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  },
};

/**
 * Hours a year that a conversion saves on one family of parts: set-ups and pieces, by hand less attended afterwards.
 * Hours in, hours out; pieces and batches are those of a year.
 */
export const hoursSavedPerYear: Formula<{
  batches: number;
  setUpByHand: number;
  setUpAfter: number;
  pieces: number;
  pieceByHand: number;
  pieceAfter: number;
}> = {
  id: 'hours-saved-per-year',
  label: 'Hours saved in a year',
  equation: 'hours = batches × (setUpByHand − setUpAfter) + pieces × (pieceByHand − pieceAfter)',
  tex: 'h = b\\,(s_0 - s_1) + n\\,(t_0 - t_1)',
  inputs: {
    batches: '1',
    setUpByHand: 'h',
    setUpAfter: 'h',
    pieces: '1',
    pieceByHand: 'h',
    pieceAfter: 'h',
  },
  unit: 'h',
  source: { ref: 'plain counting, no source', at: 'the owner’s own figures' },
  valid: {},
  unverified: 'It adds up the owner’s own figures; nothing is published to compare it with.',
  compute: ({ batches, setUpByHand, setUpAfter, pieces, pieceByHand, pieceAfter }) =>
    batches * (setUpByHand - setUpAfter) + pieces * (pieceByHand - pieceAfter),
};

export const worthFormulas = [
  breakEvenPieces,
  paybackYears,
  presentValue,
  internalRate,
  hoursSavedPerYear,
] as const;
