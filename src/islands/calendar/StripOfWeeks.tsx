import type { Bar, Strip, StripRow } from '../../export/strip.ts';
import { stripOf } from '../../export/strip.ts';
import { keepsAnother } from '../plan/numbers.ts';
import { Hatch } from '../shared/Hatch.tsx';
import type { PartProps } from './part.ts';
import { StripKey } from './StripKey.tsx';
import { STRIP_HATCH } from './strip-hatch.ts';
import { weekWords } from './words.ts';

const HIGH = 30;
/** Widths below this share of the strip would vanish. */
const LEAST = 0.001;

const share = (at: number): string => `${(at * 100).toFixed(3)}%`;
const wide = ({ from, to }: Pick<Bar, 'from' | 'to'>): string => share(Math.max(LEAST, to - from));

/** The weeks along the edge, and the hatch that every row fills its bands with. */
function Weeks({ marks }: Pick<Strip, 'marks'>) {
  return (
    <div class="strip-row strip-head" aria-hidden="true">
      <span class="quiet small">Week</span>
      <svg class="strip-track" width="100%" height="20" aria-hidden="true">
        <defs>
          <Hatch id={STRIP_HATCH} tone="ink" pitch={7} weight={0.35} />
        </defs>
        {marks.map(({ week, at }) => (
          <text
            key={week}
            x={share(at)}
            y="13"
            text-anchor={at === 0 ? 'start' : at > 0.97 ? 'end' : 'middle'}
          >
            {week}
          </text>
        ))}
      </svg>
    </div>
  );
}

function Ground({ strip: { marks, out }, high }: { strip: Strip; high: number }) {
  return (
    <>
      {out.map((band) => (
        <rect
          key={band.id}
          class="out-band"
          x={share(band.from)}
          width={wide(band)}
          y="0"
          height={high}
          fill={`url(#${STRIP_HATCH})`}
        />
      ))}
      {marks.map(({ week, at }) => (
        <line key={week} class="week-line" x1={share(at)} x2={share(at)} y1="0" y2={high} />
      ))}
    </>
  );
}

/** Early and late ends of a stage as the ticks of a dimension. */
function Ends({ row }: { row: StripRow }) {
  return (
    <g class="strip-ends">
      <line x1={share(row.early)} x2={share(row.late)} y1="13" y2="13" />
      {[row.early, row.late].map((at, i) => (
        <line key={i} x1={share(at)} x2={share(at)} y1="8" y2="18" />
      ))}
    </g>
  );
}

function StageTrack({ row, strip, next }: { row: StripRow; strip: Strip; next: string | undefined }) {
  const left = row.tasks.filter(({ done }) => !done);
  return (
    <svg class="strip-track" width="100%" height={HIGH} aria-hidden="true">
      <Ground strip={strip} high={HIGH} />
      <line class="strip-reach" x1={share(row.from)} x2={share(row.to)} y1="13" y2="13" />
      {left.map((task) => (
        <rect
          key={task.id}
          class={task.id === next ? 'strip-task is-next' : 'strip-task'}
          x={share(task.from)}
          width={wide(task)}
          y="5"
          height="16"
        />
      ))}
      {left.map((task) =>
        task.critical ? (
          <line
            key={task.id}
            class="strip-chain"
            x1={share(task.from)}
            x2={share(task.to)}
            y1="24.5"
            y2="24.5"
          />
        ) : null,
      )}
      {left.length > 0 ? <Ends row={row} /> : null}
    </svg>
  );
}

function ParcelTrack({ parcel, strip }: { parcel: Bar; strip: Strip }) {
  return (
    <svg class="strip-track" width="100%" height="18" aria-hidden="true">
      <Ground strip={strip} high={18} />
      <line class="parcel-way" x1={share(parcel.from)} x2={share(parcel.to)} y1="9" y2="9" />
      <circle class="parcel-sent" cx={share(parcel.from)} cy="9" r="3" />
      <rect
        class="parcel-here"
        x={share(parcel.to)}
        y="5.5"
        width="7"
        height="7"
        transform="translate(-3.5)"
      />
    </svg>
  );
}

function StageRows({ strip, calendar }: { strip: Strip } & Pick<PartProps, 'calendar'>) {
  const next = calendar.tasks.find(({ done }) => !done)?.id;
  return (
    <ol class="list-plain strip-rows">
      {strip.rows.map((row, at) => {
        const days = calendar.stages[at]?.days;
        const isDone = row.tasks.every(({ done }) => done);
        return (
          <li key={row.id} class="strip-row">
            <b>{row.name}</b>
            <StageTrack row={row} strip={strip} next={next} />
            <span class="strip-words">
              {isDone ? 'done' : weekWords(...row.weeks)}
              {days && !isDone ? <span class="quiet">{` ${days.from} to ${days.to}`}</span> : null}
            </span>
          </li>
        );
      })}
    </ol>
  );
}

function Parcels({ strip }: { strip: Strip }) {
  if (strip.parcels.length === 0) return null;
  return (
    <>
      <h3>Longest on the way</h3>
      <ul class="list-plain strip-rows">
        {strip.parcels.map((parcel) => (
          <li key={parcel.id} class="strip-row is-parcel">
            <span>{parcel.name}</span>
            <ParcelTrack parcel={parcel} strip={strip} />
            <span class="strip-words">{weekWords(...parcel.weeks)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** The plan as a strip of weeks: a row for each stage, parcels under them, the lathe out of use hatched through all rows. */
export function StripOfWeeks({ report, calendar }: PartProps) {
  const strip = stripOf(calendar);
  return (
    <section class="rule-section" id="weeks" tabIndex={-1}>
      <h2>Strip of weeks</h2>
      <p>
        One person works one task after another, and takes up another stage while a parcel is on its way. Bars
        stand where they typically fall; no single way follows all of them.
      </p>
      <StripKey apart={keepsAnother(report) ? 'this lathe apart' : 'lathe out of use'} />
      <Weeks marks={strip.marks} />
      <StageRows strip={strip} calendar={calendar} />
      <Parcels strip={strip} />
      <details>
        <summary>The strip in words</summary>
        <ul class="strip-said">
          {strip.words.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}
