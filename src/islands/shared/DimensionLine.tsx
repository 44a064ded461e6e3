import { textWidth } from './span.ts';

const GAP = 5;

/** Where a dimension's line and figure stand. The figure leaves the line when the gap is too small. */
export interface DimensionPlaces {
  inside: boolean;
  textX: number;
  anchor: 'start' | 'middle' | 'end';
  /** The pieces of the line, each from x to x, in px. */
  pieces: [number, number][];
}

/** Lays out a dimension from `x1` to `x2` px; `edge` is where the drawing ends on the right. */
export function layoutDimension(
  x1: number,
  x2: number,
  text: string,
  edge: number,
  size = 12,
): DimensionPlaces {
  const need = textWidth(text, size) + 2 * GAP;
  const middle = (x1 + x2) / 2;
  if (x2 - x1 >= need + 8) {
    const pieces: [number, number][] = [
      [x1, middle - need / 2],
      [middle + need / 2, x2],
    ];
    return { inside: true, textX: middle, anchor: 'middle', pieces };
  }
  const fitsRight = x2 + need <= edge;
  const textX = fitsRight ? x2 + GAP + 1 : x1 - GAP - 1;
  return { inside: false, textX, anchor: fitsRight ? 'start' : 'end', pieces: [[x1, x2]] };
}

interface MarkProps {
  x1: number;
  x2: number;
  y: number;
  text: string;
  edge: number;
  bold?: boolean;
  size?: number;
}

/** The dimension as part of a larger drawing. */
export function DimensionMark({ x1, x2, y, text, edge, bold = false, size = 12 }: MarkProps) {
  const place = layoutDimension(x1, x2, text, edge, size);
  return (
    <>
      {[x1, x2].map((x, i) => (
        <line key={i} x1={x} x2={x} y1={y - 5} y2={y + 5} />
      ))}
      {place.pieces.map(([from, to]) => (
        <line key={from} class="reach" x1={from} x2={to} y1={y} y2={y} />
      ))}
      <text
        x={place.textX}
        y={y + size * 0.36}
        font-size={size}
        text-anchor={place.anchor}
        class={bold ? 'bold' : ''}
      >
        {text}
      </text>
    </>
  );
}

export interface DimensionLineProps {
  /** The range as words: "24–48 h". */
  text: string;
  /** Length of the line in px: one per column of a table, a sign for "range" and not to scale. */
  length?: number;
  tone?: 'ink' | 'blue' | 'quiet' | 'look';
  /** A range that cannot be had as things stand. */
  dashed?: boolean;
  bold?: boolean;
}

/** A range drawn as on a drawing: two ticks, a line, the figure in the gap. The text is read as text. */
export function DimensionLine({
  text,
  length = 104,
  tone = 'ink',
  dashed = false,
  bold = false,
}: DimensionLineProps) {
  const fits = layoutDimension(1, length - 1, text, length).inside;
  const width = fits ? length : length + Math.ceil(textWidth(text)) + 12;
  return (
    <svg
      role="img"
      aria-label={text}
      class={`drawing dimension ${tone}${dashed ? ' dashed' : ''}`}
      width={width}
      height="16"
      viewBox={`0 0 ${width} 16`}
    >
      <DimensionMark x1={1} x2={length - 1} y={8} text={text} edge={width} bold={bold} />
    </svg>
  );
}
