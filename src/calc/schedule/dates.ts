import { dayAfter, isDay } from './order-by.ts';

const DAYS_A_WEEK = 7;
/** Months of equal length, so that a table of months needs no start date: 365.2425 days over 12. */
export const WEEKS_A_MONTH = 365.2425 / 12 / DAYS_A_WEEK;

/** The day so many weeks after a day, both YYYY-MM-DD; part of a day counts to the day it falls on. Throws on no day. */
export function dayAtWeek(start: string, weeks: number): string {
  if (!isDay(start)) throw new RangeError(`not a day: ${start}`);
  return dayAfter(start, Math.floor(weeks * DAYS_A_WEEK + 1e-9));
}
