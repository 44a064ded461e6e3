/** How days, numbers, ids and sums are written in a link, and read back: undefined for what is none. */

const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/** An id such as the trade uses, known or not. */
export const isId = (text: string): boolean => ID.test(text) && text.length <= 60;

/** A day without its dashes: "20270103". */
export const writeDay = (day: string): string => day.replaceAll('-', '');

export function readDay(text: string): string | undefined {
  const [, year, month, day] = /^(\d{4})(\d{2})(\d{2})$/.exec(text) ?? [];
  if (!year) return undefined;
  const said = `${year}-${month}-${day}`;
  const at = new Date(`${said}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(said) ? said : undefined;
}

export function readNumber(text: string): number | undefined {
  return /^-?(\d+\.?\d*|\.\d+)(e[+-]?\d{1,3})?$/i.test(text) ? Number(text) : undefined;
}

/** A number within limits, both ends counted. */
export function readWithin(text: string, least: number, most: number): number | undefined {
  const value = readNumber(text);
  return value !== undefined && value >= least && value <= most ? value : undefined;
}

/** Decimal text of money, and of a rate, as it was typed: "1234.50". */
export const isAmount = (text: string): boolean => /^\d{1,12}(\.\d{1,8})?$/.test(text);

/** ISO 4217. */
export const isCurrency = (text: string): boolean => /^[A-Z]{3}$/.test(text);
