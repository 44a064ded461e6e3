import { PLACES, pileUp } from './shared-scale.ts';

const PITCH = 3;
const AXIS = 64;
const HEIGHT = 68;

interface Props {
  readonly values: readonly number[];
  /** The right end of the scale that the whole row shares. */
  readonly end: number;
  /** The two ends of the scale in words. */
  readonly ends: readonly [string, string];
  /** What is drawn, for a reader who hears it. */
  readonly say: string;
}

const percent = (share: number): string => `${Math.round(share * 1000) / 10}%`;

/** Twenty washers edge-on, on a rod whose scale is that of its row, so that columns compare by eye. */
export function SmallRod({ values, end, ends, say }: Props) {
  return (
    <div class="small-rod">
      <svg class="drawing" role="img" aria-label={say} width="100%" height={HEIGHT}>
        {pileUp(values, end).map(({ place, row }, at) => (
          <rect
            key={at}
            class="washer"
            x={percent((place + 0.1) / PLACES)}
            width={percent(0.8 / PLACES)}
            y={AXIS - (row + 1) * PITCH}
            height={PITCH - 0.9}
          />
        ))}
        <line class="axis-line" x1="0" x2="100%" y1={AXIS + 0.5} y2={AXIS + 0.5} />
        {['0.5', '50%', '99.7%'].map((x) => (
          <line key={x} class="axis-line" x1={x} x2={x} y1={AXIS} y2={HEIGHT} />
        ))}
      </svg>
      <p class="small-rod-ends" aria-hidden="true">
        <span>{ends[0]}</span>
        <span>{ends[1]}</span>
      </p>
    </div>
  );
}
