import type { Quantity } from '../core/quantity.ts';

/** One line of the sheet that stays with the machine. Plain data. */
export interface Setting {
  /** kebab-case, permanent. */
  readonly id: string;
  readonly label: string;
  readonly axis: 'cross' | 'carriage' | 'both' | 'spindle' | 'machine';
  /** Worked out or planned, SI; missing where it is to be written in. */
  readonly value?: Quantity;
  /** What is set where it is no figure. */
  readonly text?: string;
  /** Where it comes from, in words: worked out, read in a sheet, or found on the machine and how. */
  readonly how: string;
  /** A blank is printed beside it, for what is found on the machine. */
  readonly writeIn: boolean;
  /** Which of the two a figure across the work is: said on every one of them. */
  readonly diameterOrRadius?: 'diameter' | 'radius';
}

type Words = Pick<Setting, 'how'> & Partial<Pick<Setting, 'text' | 'diameterOrRadius'>>;

/** To be found on the machine or read in a sheet: printed as a blank. */
export const blank = (axis: Setting['axis'], id: string, label: string, words: Words): Setting => ({
  id,
  label,
  axis,
  writeIn: true,
  ...words,
});

/** Known on paper; a missing figure becomes a blank. */
export const worked = (
  axis: Setting['axis'],
  id: string,
  label: string,
  value: Quantity | undefined,
  words: Words,
): Setting => ({ id, label, axis, writeIn: value === undefined, ...(value && { value }), ...words });

/** Planned on paper, then found on the machine and written beside it. */
export const planned = (...given: Parameters<typeof worked>): Setting => ({
  ...worked(...given),
  writeIn: true,
});

/** Settled by the plan, no figure. */
export const settled = (
  axis: Setting['axis'],
  id: string,
  label: string,
  text: string,
  how: string,
  diameterOrRadius?: Setting['diameterOrRadius'],
): Setting => ({
  id,
  label,
  axis,
  writeIn: false,
  text,
  how,
  ...(diameterOrRadius && { diameterOrRadius }),
});
