import { type FigureInput, siOf } from '../../calc/working-figures/figure.ts';
import { plain } from '../shared/format.ts';

export type Typed = { readonly value: number } | { readonly fault: string };

/** A figure in the unit of its input, as a field shows it. */
export const shownOf = ({ written, step }: FigureInput, value: number): string => {
  const decimals = Math.max(1, 1 - Math.floor(Math.log10(step)));
  return String(Number((value * written.per).toFixed(decimals)));
};

/** Reads what was typed, a comma for a point allowed, as SI; or says what is wrong with it. */
export function readTyped(input: FigureInput, typed: string): Typed {
  const text = typed.trim().replace(',', '.');
  const { unit } = input.written;
  const { low, high } = input;
  const span = `${plain(low, 3)} to ${plain(high, 3)} ${unit}`;
  if (!/^\d*\.?\d+$|^\d+\.$/.test(text)) return { fault: `Write a plain figure, ${span}.` };
  const figure = Number(text);
  return figure < low || figure > high
    ? { fault: `This figure works from ${span}.` }
    : { value: siOf(input, figure) };
}
