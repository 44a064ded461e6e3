import { ROMAN } from './roman.ts';

/** Signs of our own on the same grid: what ASCII has no place for, and a hyphen that is shorter than a minus. */
const OWN: Readonly<Record<string, readonly [width: number, strokes: string]>> = {
  ' ': [14, ''],
  '-': [14, 'M3,14 L11,14'],
  '–': [18, 'M1,14 L17,14'],
  '−': [22, 'M3,13 L19,13'],
  '×': [20, 'M4,7 L16,19 M16,7 L4,19'],
  '·': [10, 'M5,12 L4,13 5,14 6,13 5,12'],
  '…': [26, 'M4,21 L5,22 M12,21 L13,22 M20,21 L21,22'],
  '°': [13, 'M6,1 L4,2 3,4 4,6 6,7 8,6 9,4 8,2 6,1'],
  '‘': [8, 'M5,1 L4,3 3,5 4,7'],
  '’': [8, 'M4,1 L5,3 4,5 3,7'],
  '“': [14, 'M5,1 L4,3 3,5 4,7 M11,1 L10,3 9,5 10,7'],
  '”': [14, 'M4,1 L5,3 4,5 3,7 M10,1 L11,3 10,5 9,7'],
};
const BASE = 22;
/** Rows of the grid from the foot of a capital to its head. */
const CAPITAL = 21;

/** Throws where there is no sign for a letter: better no picture than a wrong one. */
function signOf(letter: string): readonly [width: number, strokes: string] {
  const found = OWN[letter] ?? ROMAN[letter.charCodeAt(0) - 33];
  if (!found) throw new Error(`the lettering has no sign for “${letter}”: add it to src/found/lettering.ts`);
  return found;
}

/** Width of a line whose capitals are `size` high, in the unit of `size`. */
export const widthOf = (text: string, size: number): number =>
  [...text].reduce((sum, letter) => sum + signOf(letter)[0], 0) * (size / CAPITAL);

export interface Placed {
  readonly x: number;
  /** The line that capitals stand on. */
  readonly y: number;
  /** Height of a capital. */
  readonly size: number;
  readonly anchor?: 'start' | 'middle' | 'end';
}

const START = { start: 0, middle: 0.5, end: 1 } as const;
const tenths = (n: number): string => String(Math.round(n * 10) / 10);

/** A line of text as the strokes of an SVG path. */
export function strokesOf(text: string, { x, y, size, anchor = 'start' }: Placed): string {
  const scale = size / CAPITAL;
  let left = x - START[anchor] * widthOf(text, size);
  const drawn = [...text].map((letter) => {
    const [width, strokes] = signOf(letter);
    const at = left;
    left += width * scale;
    return strokes.replace(
      /(-?\d+),(-?\d+)/g,
      (_, across, down) => `${tenths(at + across * scale)},${tenths(y + (down - BASE) * scale)}`,
    );
  });
  return drawn.filter(Boolean).join(' ');
}

/** The text in lines no wider than `width`; a word that is wider stands alone. */
export function wrapped(text: string, width: number, size: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (lines.length > 0 && widthOf(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
