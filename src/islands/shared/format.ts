/** Figures as they are said on screen. Guesses carry two figures; what an owner typed is shown as typed. */

import { $shown, toShown } from './currency.ts';

export type Units = 'metric' | 'inch';

const MINUS = '−';
const MILLIMETRES = 1000;
const INCHES = 1 / 0.0254;

/** `n` to so many significant digits (1 or more); zero and what is not finite come back as 0. */
export function significant(n: number, digits: number): number {
  if (!Number.isFinite(n) || n === 0) return 0;
  return Number(n.toPrecision(digits));
}

/** A plain number with thousands marked: 12345.5 → "12,345.5"; at most `decimals` places, no idle zeros. */
export function plain(n: number, decimals = 0): string {
  if (!Number.isFinite(n)) return '–';
  const [whole = '0', part = ''] = Math.abs(n).toFixed(decimals).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  const rest = part.replace(/0+$/, '');
  const text = rest ? `${grouped}.${rest}` : grouped;
  return n < 0 && /[1-9]/.test(text) ? `${MINUS}${text}` : text;
}

/** An amount of money to two significant digits, never finer than ten. */
export const roundMoney = (n: number): number => Math.round(significant(n, 2) / 10) * 10;

/** An amount of the shown currency with its sign. */
export const signed = (n: number, decimals = 0): string =>
  `${n < 0 ? MINUS : ''}${$shown.get().sign}${plain(Math.abs(n), decimals)}`;

/** A planning figure, given in dollars and said in the shown currency: "$3,800". */
export const money = (n: number): string => signed(roundMoney(toShown(n)));

/** Dollars to the cent of the shown currency: "$5,325.50". */
export const exactMoney = (n: number): string => exactShown(toShown(n));

/** An amount of the shown currency to the cent. */
function exactShown(n: number): string {
  const cents = Math.round(Math.abs(n) * 100) % 100;
  const tail = cents === 0 ? '' : `.${String(cents).padStart(2, '0')}`;
  const whole = plain(cents === 0 ? Math.round(Math.abs(n)) : Math.floor(Math.abs(n)));
  return `${n < 0 ? MINUS : ''}${$shown.get().sign}${whole}${tail}`;
}

/** Decimal text to the cent, as it is exported, with thousands marked: "1240.5" gives "$1,240.50". */
export function exactText(amount: string): string {
  const [, minus = '', whole = '0', part = ''] = /^(-?)(\d+)(?:\.(\d+))?$/.exec(amount) ?? [];
  return `${minus ? MINUS : ''}$${whole.replace(/\B(?=(\d{3})+$)/g, ',')}.${part.padEnd(2, '0').slice(0, 2)}`;
}

/** A sum that is kept in dollars, and beside it what it is in the shown currency: "$86.11 (€77.50)". */
export function exactBoth(amount: string): string {
  const dollars = exactText(amount);
  return $shown.get().word === 'dollars' ? dollars : `${dollars} (${exactMoney(Number(amount))})`;
}

/** "$3,800–4,900"; one figure when both round to the same; "−$160 to +$90" across zero. */
export function moneyRange(lo: number, hi: number): string {
  const [from, to] = [roundMoney(toShown(lo)), roundMoney(toShown(hi))];
  if (from === to) return signed(from);
  if (from < 0) return `${signed(from)} to ${to > 0 ? '+' : ''}${signed(to)}`;
  return `${signed(from)}–${plain(to)}`;
}

/** "$630 less", "$60 more", "the same money". */
export const moneyDifference = (n: number): string =>
  difference(roundMoney(toShown(n)), (by) => signed(by), 'the same money');

/** Hours to two significant digits, never finer than a tenth. */
export const roundHours = (n: number): number => Math.round(significant(n, 2) * 10) / 10;

const figureOfHours = (n: number): string => plain(roundHours(n), 1);

/** "190 h". */
export const hours = (n: number): string => `${figureOfHours(n)} h`;

/** "150–240 h". */
export const hoursRange = (lo: number, hi: number): string =>
  range(figureOfHours(lo), figureOfHours(hi), 'h');

/** "9 h less", "2 h more", "the same hours". */
export const hoursDifference = (n: number): string => difference(roundHours(n), hours, 'the same hours');

/** Whole weeks from two up, tenths below. */
const figureOfWeeks = (n: number): string => plain(significant(n, 2), Math.abs(n) < 2 ? 1 : 0);

/** "12 weeks", "1 week". */
export function weeks(n: number): string {
  const figure = figureOfWeeks(n);
  return `${figure} ${figure === '1' ? 'week' : 'weeks'}`;
}

/** "8–24 weeks". */
export function weeksRange(lo: number, hi: number): string {
  const [from, to] = [figureOfWeeks(lo), figureOfWeeks(hi)];
  return from === to ? weeks(hi) : `${from}–${to} weeks`;
}

/** "17 of 20": a count of the ways it could turn out. */
export const ofTwenty = (count: number): string => `${Math.round(count)} of 20`;

/** A chance (0 to 1) on the one denominator that is used everywhere: "about 6 of 20". */
export function chanceOfTwenty(chance: number): string {
  const count = Math.round(chance * 20);
  if (count < 1) return chance > 0 ? 'less than 1 of 20' : 'none of 20';
  return `about ${ofTwenty(count)}`;
}

/** How many of the values lie at or under the limit. */
export const countWithin = (values: readonly number[], limit: number): number =>
  values.filter((value) => value <= limit).length;

/** The middle half of sorted outcomes, as the rod draws it: ten of twenty lie from `from` to `to`. */
export function middleHalf(values: readonly number[]): { from: number; to: number } {
  const from = values[Math.floor(values.length / 4)] ?? 0;
  return { from, to: values[Math.ceil((values.length * 3) / 4) - 1] ?? from };
}

/** A length in metres as the reader's unit has it, without the unit: 0.25 → "250" or "9.84". */
export function lengthFigure(metres: number, units: Units): string {
  if (units === 'inch') return plain(significant(metres * INCHES, 4), metres < 0.0254 ? 4 : 3);
  return plain(significant(metres * MILLIMETRES, 5), 3);
}

/** A length in metres: "250 mm" or "9.843 in". */
export const lengthText = (metres: number, units: Units): string =>
  `${lengthFigure(metres, units)} ${units === 'inch' ? 'in' : 'mm'}`;

/** The same three for scales and for limits: round figures stand as they are, guesses are rounded. Money is given as shown. */
export const moneyMark = (n: number): string =>
  Number.isInteger(n / 10) ? exactShown(n) : signed(roundMoney(n));
export const hoursMark = (n: number): string => (Number.isInteger(n * 2) ? `${plain(n, 1)} h` : hours(n));
export const weeksMark = (n: number): string => (Number.isInteger(n * 2) ? plain(n, 1) : figureOfWeeks(n));

/** "1 question", "3 questions". */
export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  const last = words[words.length - 1] ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

const range = (from: string, to: string, unit: string): string =>
  from === to ? `${to} ${unit}` : `${from}–${to} ${unit}`;

function difference(n: number, say: (by: number) => string, same: string): string {
  if (n === 0) return same;
  return n < 0 ? `${say(-n)} less` : `${say(n)} more`;
}
