import type { UnknownSwing } from '../../../calc/choosing.ts';
import { Lines } from '../../shared/TrackScale.tsx';
import type { Track } from '../../shared/track.ts';
import { KINDS, type Kind, narrowsText } from './kinds.ts';

const HEIGHT = 22;
const MIDDLE = 11;

interface Props {
  readonly kind: Kind;
  readonly track: Track;
  readonly typical: number;
  readonly unknown: UnknownSwing;
}

/** A dimension line from one end of an unknown to the other, with the typical total marked. */
function Reach({ kind, track, typical, unknown }: Props) {
  const { shown, say } = KINDS[kind];
  const { low, high } = unknown[kind];
  const [x1, x2, centre] = [low, high, typical].map((value) => `${track.at(shown(value))}%`);
  return (
    <svg
      class="drawing dimension blue swing-reach"
      role="img"
      aria-label={`${unknown.name}: ${say(low)} to ${say(high)}`}
      width="100%"
      height={HEIGHT}
    >
      <g class="swing-ground">
        <Lines track={track} centre={shown(typical)} height={HEIGHT} />
      </g>
      {[x1, x2].map((x, at) => (
        <line key={at} x1={x} x2={x} y1={MIDDLE - 5} y2={MIDDLE + 5} />
      ))}
      <line class="reach" x1={x1} x2={x2} y1={MIDDLE} y2={MIDDLE} />
      <circle class="swing-dot" cx={centre} cy={MIDDLE} r="3" />
      <text class="bold" x={x1} dx="-5" y={MIDDLE + 4} text-anchor="end">
        {say(low)}
      </text>
      <text class="bold" x={x2} dx="5" y={MIDDLE + 4} text-anchor="start">
        {say(high)}
      </text>
    </svg>
  );
}

export function UnknownRow(props: Props) {
  const { kind, unknown } = props;
  const narrows = narrowsText(kind, unknown);
  return (
    <li class="swing-row">
      <div class="swing-name">
        <b>{unknown.name}</b>
        <span class="task-note">
          {unknown.lowMeans}; or {unknown.highMeans}
        </span>
      </div>
      <Reach {...props} />
      <p class="small swing-find">
        <b>To find out now:</b> {unknown.findOut} {narrows ? <span class="quiet">It {narrows}.</span> : null}
      </p>
    </li>
  );
}
