import { correction, generate } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';

/** A link as a square code (ISO/IEC 18004), ready to be drawn. */
export interface DrawnCode {
  /** Path of the dark squares, one unit each. */
  readonly d: string;
  /** Squares on a side, the quiet zone not counted. */
  readonly squares: number;
  /** Side on paper with the quiet zone, millimetres. */
  readonly side: number;
}

/** Empty squares that the standard wants on every side. */
export const QUIET = 4;

/** Four dots of a printer with 300 dots an inch: what a telephone still reads from paper. Common practice, no source. */
const SQUARE_MM = (4 / 300) * 25.4;
const LEAST_MM = 25;
/**
 * Version 35 of 40 in ISO/IEC 18004, 157 squares on a side: beyond it a code takes a third of the sheet and telephones give
 * up. Common practice, no source.
 */
const LARGEST_VERSION = 35;

/** The code of a text; undefined when it is too long for one that can be read from paper. */
export function drawCode(text: string): DrawnCode | undefined {
  try {
    const code = generate(text, { minCorrectionLevel: correction.L, maxVersion: LARGEST_VERSION });
    const across = code.size + 2 * QUIET;
    return { d: toSvgPath(code), squares: code.size, side: Math.max(LEAST_MM, across * SQUARE_MM) };
  } catch {
    return undefined;
  }
}
