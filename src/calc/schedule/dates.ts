const MS_A_DAY = 86_400_000;
const DAYS_A_WEEK = 7;
/** Months of equal length, so that a table of months needs no start date: 365.2425 days over 12. */
export const WEEKS_A_MONTH = 365.2425 / 12 / DAYS_A_WEEK;

/** True for a day that exists, written YYYY-MM-DD. */
export function isDay(text: string): boolean {
  const parsed = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : undefined;
  return parsed !== undefined && Number.isFinite(parsed.getTime()) && parsed.toISOString().startsWith(text);
}

/** The day so many weeks after a day, both YYYY-MM-DD; part of a day counts to the day it falls on. Throws on no day. */
export function dayAfter(start: string, weeks: number): string {
  if (!isDay(start)) throw new RangeError(`not a day: ${start}`);
  const days = Math.floor(weeks * DAYS_A_WEEK + 1e-9);
  return new Date(Date.parse(`${start}T00:00:00Z`) + days * MS_A_DAY).toISOString().slice(0, 10);
}
