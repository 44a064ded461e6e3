import type { RoomId, RoomState } from '../../components/lathe-shapes.ts';
import { LatheBody } from './LatheMap.tsx';
import { CALLOUTS, type Callout } from './lathe-callouts.ts';

export interface NamedRoom {
  readonly id: RoomId;
  readonly number: number;
  readonly name: string;
  /** One short line under the name: a range of money, or how far the room has been answered. */
  readonly note: string;
  readonly href?: string;
}

interface Props {
  readonly rooms: readonly NamedRoom[];
  readonly states?: Partial<Record<RoomId, RoomState>>;
}

const line = ({ dot, knee, balloon }: Callout) =>
  `M${dot.join(' ')}${knee ? `L${knee.join(' ')}` : ''}L${balloon.join(' ')}`;

function Leader({ callout }: { callout: Callout }) {
  const [x, y] = callout.dot;
  return (
    <g class="callout">
      <path class="leader-halo" d={line(callout)} />
      <path class="leader" d={line(callout)} />
      <circle class="leader-dot" cx={x} cy={y} r="2.8" />
    </g>
  );
}

function Named({ at: [x, y], room }: { at: Callout['balloon']; room: NamedRoom }) {
  const words = (
    <>
      <circle class="balloon" cx={x} cy={y} r="11.5" />
      <text class="callout-number" x={x} y={y + 4.5} font-size="13">
        {room.number}
      </text>
      <text class="callout-name" x={x + 17} y={y}>
        {room.name}
      </text>
      <text class="quiet-text" x={x + 17} y={y + 15} font-size="12.5">
        {room.note}
      </text>
    </>
  );
  return room.href ? (
    <a class="callout" href={room.href} data-keep-path>
      {words}
    </a>
  ) : (
    <g class="callout">{words}</g>
  );
}

/** The lathe from above with a leader to each of the nine rooms. On a phone the leaders go: a list must say the same. */
export function LatheLarge({ rooms, states = {} }: Props) {
  const named = CALLOUTS.flatMap((callout) => {
    const room = rooms.find(({ id }) => id === callout.room);
    return room ? [{ callout, room }] : [];
  });
  return (
    <svg
      class="drawing lathe lathe-large"
      aria-labelledby="lathe-title lathe-desc"
      width="800"
      viewBox="-40 -46 800 410"
    >
      <title id="lathe-title">A small lathe seen from above</title>
      <desc id="lathe-desc">
        A map of the nine rooms of questions: headstock on the left, carriage and cross slide in the middle,
        tailstock on the right, motors, cabinet and control around it, the bench in front.
      </desc>
      <g>
        <LatheBody states={states} idPrefix="lathe" pitch={9} />
        {named.map(({ callout }) => (
          <Leader key={callout.room} callout={callout} />
        ))}
      </g>
      {named.map(({ callout, room }) => (
        <Named key={room.id} at={callout.balloon} room={room} />
      ))}
    </svg>
  );
}
