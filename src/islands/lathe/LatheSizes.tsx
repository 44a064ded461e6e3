import { useStore } from '@nanostores/preact';
import type { SizeClass } from '../../calc/core/machine.ts';
import { factById } from '../../calc/facts.ts';
import { $units } from '../preferences.ts';
import { LatheBody } from '../shared/LatheMap.tsx';
import { textWidth } from '../shared/span.ts';
import { $path } from '../stores.ts';
import { saidFigure } from './units.ts';

/** Where a figure is measured: the two ends of its line, in units of the drawing, and how far its side lines reach. */
interface Size {
  readonly id: string;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly reach: number;
}

/** Lines along the lathe keep above it or below it; the one across stands beside the slide. */
const SIZES: readonly Size[] = [
  { id: 'bed-length', from: [8, -44], to: [572, -44], reach: 170 },
  { id: 'between-centres', from: [229, -16], to: [398, -16], reach: 150 },
  { id: 'carriage-travel', from: [186, 336], to: [540, 336], reach: -136 },
  { id: 'cross-travel', from: [352, 84], to: [352, 222], reach: -14 },
];
const FONT = 14;
const TICK = 6;
/** From the end of a line across to its figure, which stands on bare bench. */
const CLEAR = 38;

const isAcross = ({ from, to }: Size): boolean => from[0] === to[0];

function SideLines({ size: { from, to, reach }, across }: { size: Size; across: boolean }) {
  return (
    <>
      {[from, to].map(([x, y]) => (
        <line
          key={`${x} ${y}`}
          class="side-line"
          x1={x}
          y1={y}
          x2={across ? x + reach : x}
          y2={across ? y : y + reach}
        />
      ))}
    </>
  );
}

function Ticks({ size: { from, to }, across }: { size: Size; across: boolean }) {
  const [dx, dy] = across ? [TICK, 0] : [0, TICK];
  return (
    <>
      {[from, to].map(([x, y]) => (
        <line key={`${x} ${y}`} x1={x - dx} y1={y - dy} x2={x + dx} y2={y + dy} />
      ))}
    </>
  );
}

function Line({ size, text, typed }: { size: Size; text: string; typed: boolean }) {
  const { from, to } = size;
  const across = isAcross(size);
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const half = textWidth(text, FONT) / 2 + 8;
  const fits = 2 * half + 4 * TICK < to[0] - from[0];
  return (
    <g class={typed ? 'dimension blue' : 'dimension'}>
      <SideLines size={size} across={across} />
      <Ticks size={size} across={across} />
      {fits ? (
        <>
          <line x1={from[0]} x2={x - half} y1={y} y2={y} />
          <line x1={x + half} x2={to[0]} y1={y} y2={y} />
        </>
      ) : (
        <line x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />
      )}
      {across ? <line class="side-line" x1={x} x2={x} y1={to[1]} y2={to[1] + CLEAR - FONT} /> : null}
      <text
        class={typed ? 'halo bold' : 'halo'}
        x={fits ? x : across ? x + 2 * half * 0.75 : to[0] + 10}
        y={across ? to[1] + CLEAR : y + 5}
        font-size={FONT}
        text-anchor={fits ? 'middle' : across ? 'end' : 'start'}
      >
        {text}
      </text>
    </g>
  );
}

/** The lathe from above with its lengths as on a drawing. The fields below say the same; it is not to scale. */
export function LatheSizes({ size }: { size: SizeClass }) {
  const units = useStore($units);
  const given = useStore($path).facts;
  return (
    <figure class="lathe-sizes">
      <svg
        class="drawing lathe"
        aria-hidden="true"
        width="640"
        height="371"
        viewBox="-20 -60 700 406"
        font-size={FONT}
      >
        <LatheBody states={{}} idPrefix="sizes" pitch={9} />
        {SIZES.map((each) => {
          const fact = factById(each.id);
          const value = given[each.id] ?? fact?.typical?.[size];
          if (!fact || value === undefined) return null;
          const text = `${fact.name.toLowerCase()} ${saidFigure(value, fact.show, units)}`;
          return <Line key={each.id} size={each} text={text} typed={given[each.id] !== undefined} />;
        })}
      </svg>
      <figcaption class="quiet small">Not to scale. Lengths of your own stand in bold.</figcaption>
    </figure>
  );
}
