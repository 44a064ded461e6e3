import { type Placed, strokesOf, widthOf } from './lettering.ts';

/** A line of letters as it stands in a picture. */
export interface Letters extends Placed {
  readonly colour: string;
  /** Width of the stroke; letters of a picture are drawn with a round pen. */
  readonly pen: number;
}

export const letters = (text: string, { colour, pen, ...placed }: Letters): string =>
  `<path d="${strokesOf(text, placed)}" fill="none" stroke="${colour}" stroke-width="${pen}" stroke-linecap="round" stroke-linejoin="round"/>`;

export const line = (d: string, colour: string, pen: number): string =>
  `<path d="${d}" fill="none" stroke="${colour}" stroke-width="${pen}"/>`;

interface Dimension {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly colour: string;
}

const REACH = 26;

/** A range as on a drawing: two ticks, a line, the figure in the gap. */
function dimension(text: string, { x, y, size, colour }: Dimension): string {
  const gap = size * 0.7;
  const right = x + widthOf(text, size) + 2 * (REACH + gap);
  const middle = y - size / 2;
  const ticks = [x, right].map((at) => `M${at.toFixed(1)} ${middle - 13}v26`).join('');
  const reach = `M${x} ${middle}h${REACH}M${right.toFixed(1)} ${middle}h${-REACH}`;
  return line(ticks + reach, colour, 2.2) + letters(text, { x: x + REACH + gap, y, size, colour, pen: 3 });
}

const RANGE = /\d–\d|\d to [−+]/;

/** A range as a dimension, any other figure as it is. */
export const said = (text: string, at: Dimension): string =>
  RANGE.test(text) ? dimension(text, at) : letters(text, { ...at, pen: 3 });
