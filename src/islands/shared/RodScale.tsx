import { DimensionMark, layoutDimension } from './DimensionLine.tsx';
import type { RodLayout } from './rod-layout.ts';
import { textWidth } from './span.ts';

const CAPTION = 'half of them';
/** Clear paper between two figures of a scale, in px. */
const GAP = 12;

/** Where figures would stand close enough to run together, every second tick goes without. */
function labelEvery({ ticks }: RodLayout, format: (n: number) => string): number {
  const pitch = (ticks[1]?.x ?? 0) - (ticks[0]?.x ?? 0);
  const widest = Math.max(...ticks.map(({ value }) => textWidth(format(value), 11.5)));
  return ticks.length > 3 && pitch < widest + GAP ? 2 : 1;
}

export function ScaleLine({ rod, y, format }: { rod: RodLayout; y: number; format: (n: number) => string }) {
  const every = labelEvery(rod, format);
  return (
    <>
      <line class="axis-line" x1={rod.left} x2={rod.right} y1={y} y2={y} />
      {rod.ticks.map(({ value, x }, i) => (
        <g key={value}>
          <line class="axis-line" x1={x} x2={x} y1={y} y2={y + 4} />
          {i % every === 0 ? (
            <text class="quiet-text" x={x} y={y + 17} font-size="11.5" text-anchor="middle">
              {format(value)}
            </text>
          ) : null}
        </g>
      ))}
    </>
  );
}

export function Before({ rod, y }: { rod: RodLayout; y: number }) {
  return (
    <>
      <line class="before-line" x1="4" x2={rod.width - 4} y1={y + 3.5} y2={y + 3.5} />
      {rod.before.map((washer, i) => (
        <circle key={i} class="washer-before" cx={washer.x} cy={y + 3.5 + washer.row * 7} r="3" />
      ))}
    </>
  );
}

/** The caption takes whichever side of the dimension is free, or a line of its own. */
export function HalfRange({ rod, y, text }: { rod: RodLayout; y: number; text: string }) {
  const { x1, x2 } = rod.half;
  const need = textWidth(CAPTION) + 10;
  const { inside, anchor } = layoutDimension(x1, x2, text, rod.width);
  const figure = inside ? 0 : textWidth(text) + 12;
  const left = x1 >= need && anchor !== 'end';
  const beyond = x2 + (anchor === 'start' ? figure : 0);
  const right = beyond + need <= rod.width;
  const x = left ? x1 - 8 : right ? beyond + 8 : (x1 + x2) / 2;
  return (
    <g class="dimension">
      <DimensionMark x1={x1} x2={x2} y={y} text={text} edge={rod.width} bold />
      <text x={x} y={left || right ? y + 4 : y + 19} text-anchor={left ? 'end' : right ? 'start' : 'middle'}>
        {CAPTION}
      </text>
    </g>
  );
}
