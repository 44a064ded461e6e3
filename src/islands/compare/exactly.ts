import { plain } from '../shared/format.ts';
import type { Measure } from './pair-words.ts';

/** To the cent of a US dollar, or to the hundredth of an hour, so that what is printed adds up: "$4,930.15", "+3.25 h". */
export function exactly(measure: Measure, n: number, signed = false): string {
  const cents = Math.round(Math.abs(n) * 100);
  const minus = n < 0 && cents > 0 ? '−' : signed && cents > 0 ? '+' : '';
  const figure = `${plain(Math.floor(cents / 100))}.${String(cents % 100).padStart(2, '0')}`;
  return measure === 'money' ? `${minus}$${figure}` : `${minus}${figure} h`;
}
