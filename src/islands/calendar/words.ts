import type { Range } from '../../calc/core/range.ts';
import { hours, hoursRange, money, moneyRange, weeks, weeksRange } from '../shared/format.ts';

/** How a kind of figure is said: one of them, and two as a range. */
export interface Measure {
  readonly one: (n: number) => string;
  readonly span: (lo: number, hi: number) => string;
}

export const inMoney: Measure = { one: money, span: moneyRange };
export const inHours: Measure = { one: hours, span: hoursRange };
export const inWeeks: Measure = { one: weeks, span: weeksRange };

/** What the two ends of a `Range` leave between them. */
export const MOST = '16 of 20 ways';

/** "typically 6 weeks more; 4–8 weeks more in 16 of 20 ways", or that there is no clear difference. */
export function extraWords({ p10, p50, p90 }: Range, { one, span }: Measure): string {
  const said = (lo: number, mid: number, hi: number, word: string): string =>
    `typically ${one(mid)} ${word}; ${span(lo, hi)} ${word} in ${MOST}`;
  if (p10 === 0 && p90 === 0) return 'no difference';
  if (p10 > 0) return said(p10, p50, p90, 'more');
  if (p90 < 0) return said(-p90, -p50, -p10, 'less');
  const [from, to] = [
    p10 === 0 ? 'the same' : `${one(-p10)} less`,
    p90 === 0 ? 'the same' : `${one(p90)} more`,
  ];
  return `no clear difference: from ${from} to ${to} in ${MOST}`;
}

/** "on the first day", "week 8": a moment of the plan, with its date where the first day is known. */
export function momentWords(week: number, day?: string): string {
  if (day !== undefined) return day;
  return Math.round(week) === 0 ? 'on the first day' : `week ${Math.round(week)}`;
}

/** "week 2–11"; one week is named once. */
export function weekWords(from: number, to: number): string {
  const [first, last] = [Math.round(from), Math.round(to)];
  return first === last ? `week ${first}` : `week ${first}–${last}`;
}

/** Weeks that may pass before others have to wait, rounded to tenths below two weeks. */
export const floatWords = (n: number): string => (n < 0.05 ? 'none' : weeks(n));
