import {
  CENTRE_LINES,
  type Edge,
  REGIONS,
  type Region,
  type RoomId,
  type RoomState,
  roomNumber,
  WORK,
  WORK_OVER,
} from '../../components/lathe-shapes.ts';
import { Hatch } from './Hatch.tsx';

export interface LatheMapProps {
  /** State of each room; a room left out has nothing answered. */
  states?: Partial<Record<RoomId, RoomState>>;
  current?: RoomId;
  /** Prefix of the hatch ids; give another to a second map on the same page. */
  idPrefix?: string;
}

export interface LatheBodyProps extends Required<Pick<LatheMapProps, 'states' | 'idPrefix'>> {
  current?: RoomId;
  pitch: number;
}

function regionClass(state: RoomState, current: boolean): string {
  return `region is-${state}${current ? ' is-current' : ''}`;
}

function hatchOf(edge: Edge, state: RoomState, idPrefix: string): string | undefined {
  if (edge.kind !== 'part' || state !== 'part') return undefined;
  return `url(#${idPrefix}-${edge.turned ? 'turned' : 'straight'})`;
}

function RegionShape({
  region,
  state,
  current,
  idPrefix,
}: {
  region: Region;
  state: RoomState;
  current: boolean;
  idPrefix: string;
}) {
  return (
    <g class={regionClass(state, current)} data-room={region.room}>
      {region.edges.map((edge, i) => (
        <path key={i} class={edge.kind} d={edge.d} fill={hatchOf(edge, state, idPrefix)} />
      ))}
    </g>
  );
}

/** The lathe itself, without numbers: shared by the map and the large drawing. */
export function LatheBody({ states, current, idPrefix, pitch }: LatheBodyProps) {
  return (
    <>
      <defs>
        <Hatch id={`${idPrefix}-straight`} tone="blue" pitch={pitch} />
        <Hatch id={`${idPrefix}-turned`} tone="blue" pitch={pitch} turn={-17} />
      </defs>
      <path class="bench" d="M0 0h660v280H0z" />
      {REGIONS.map((region) => (
        <g key={region.room}>
          <RegionShape
            region={region}
            state={states[region.room] ?? 'open'}
            current={region.room === current}
            idPrefix={idPrefix}
          />
          {region.room === WORK_OVER ? <path class="work" d={WORK} /> : null}
        </g>
      ))}
      {CENTRE_LINES.map((d) => (
        <path key={d} class="centre-line" d={d} />
      ))}
    </>
  );
}

/** The small map of the nine rooms. Decorative: the list of rooms beside it says the same in words. */
export function LatheMap({ states = {}, current, idPrefix = 'map' }: LatheMapProps) {
  return (
    <svg class="drawing lathe lathe-map" aria-hidden="true" width="212" viewBox="-6 -8 672 320">
      <LatheBody states={states} current={current} idPrefix={idPrefix} pitch={16} />
      {REGIONS.map(({ room, number }) => (
        <text key={room} class="halo" x={number.x} y={number.y}>
          {roomNumber(room)}
        </text>
      ))}
    </svg>
  );
}
