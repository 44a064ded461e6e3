import { namedTicks, type Track } from './track.ts';

interface Props {
  readonly track: Track;
  /** Where the line stands that everything is read against, and what it is called. */
  readonly centre: number;
  readonly centreName: string;
  readonly mark: (value: number) => string;
}

/** The head of a chart: ticks, and the line that everything is read against. */
export function Scale({ track, centre, centreName, mark }: Props) {
  const middle = track.at(centre);
  return (
    <svg class="drawing swing-scale" width="100%" height="20" aria-hidden="true">
      {namedTicks(track, centre, centreName).map((tick) => (
        <text key={tick} class="quiet-text" x={`${track.at(tick)}%`} y="13" text-anchor="middle">
          {mark(tick)}
        </text>
      ))}
      <text class="bold" x={`${middle}%`} y="13" text-anchor="middle">
        {centreName}
      </text>
    </svg>
  );
}

/** The lines of the ticks behind a row. */
export function Grid({ track, height = '100%' }: { track: Track; height?: number | string }) {
  return (
    <>
      {track.ticks.map((tick) => (
        <line
          key={tick}
          class="swing-line"
          x1={`${track.at(tick)}%`}
          x2={`${track.at(tick)}%`}
          y1="0"
          y2={height}
        />
      ))}
    </>
  );
}

/** The lines behind a row, the centre one strong. */
export function Lines({ track, centre, height }: { track: Track; centre: number; height: number }) {
  return (
    <>
      <Grid track={track} height={height} />
      <line class="axis-line" x1={`${track.at(centre)}%`} x2={`${track.at(centre)}%`} y1="0" y2={height} />
    </>
  );
}
