import { hoursMark, plain } from '../shared/format.ts';
import { Grid } from '../shared/TrackScale.tsx';
import type { Track } from '../shared/track.ts';
import { exactly } from './exactly.ts';
import type { Measure } from './pair-words.ts';
import type { Step } from './waterfall.ts';

const BAR = 15;
const TOP = 5;
const HEIGHT = 26;
export const HATCH = 'takes-away';

export interface BarProps {
  readonly measure: Measure;
  readonly track: Track;
}

/** A typical figure at either end: a mark, its amount, and the dotted line on to the next row. */
export function End({ measure, track, value, isLast }: BarProps & { value: number; isLast: boolean }) {
  const x = `${track.at(value)}%`;
  return (
    <svg class="drawing fall-bar" aria-hidden="true" width="100%" height={HEIGHT}>
      <Grid track={track} />
      <line class="fall-carry" x1={x} x2={x} y1={isLast ? 0 : HEIGHT / 2} y2={isLast ? HEIGHT / 2 : '100%'} />
      <circle class="fall-end" cx={x} cy={HEIGHT / 2} r="4.5" />
      <text class="bold halo" x={x} dx="9" y={HEIGHT / 2 + 4}>
        {exactly(measure, value)}
      </text>
    </svg>
  );
}

export function Bar({ measure, track, step }: BarProps & { step: Step }) {
  const { from, to, by } = step;
  const [start, end] = [track.at(from), track.at(to)];
  const left = Math.min(start, end);
  const adds = by > 0;
  return (
    <svg class="drawing fall-bar" aria-hidden="true" width="100%" height={HEIGHT}>
      <Grid track={track} />
      <line class="fall-carry" x1={`${start}%`} x2={`${start}%`} y1="0" y2={TOP} />
      <line class="fall-carry" x1={`${end}%`} x2={`${end}%`} y1={TOP + BAR} y2="100%" />
      <rect
        class={adds ? 'fall-adds' : 'fall-takes'}
        fill={adds ? undefined : `url(#${HATCH})`}
        x={`${left}%`}
        width={`${Math.abs(end - start)}%`}
        y={TOP}
        height={BAR}
      />
      <text
        class="bold halo"
        x={`${end}%`}
        dx={adds ? 6 : -6}
        y={TOP + 12}
        text-anchor={adds ? 'start' : 'end'}
      >
        {exactly(measure, by, true)}
      </text>
    </svg>
  );
}

const markOf = (measure: Measure, value: number): string =>
  measure === 'money' ? `$${plain(value)}` : hoursMark(value);

/** The scale over the bars. */
export function Head({ measure, track }: BarProps) {
  return (
    <svg class="drawing fall-bar" aria-hidden="true" width="100%" height="18">
      {track.ticks.map((tick) => (
        <text key={tick} class="quiet-text" x={`${track.at(tick)}%`} y="12" text-anchor="middle">
          {markOf(measure, tick)}
        </text>
      ))}
    </svg>
  );
}
