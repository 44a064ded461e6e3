import type { ComponentChildren } from 'preact';
import type { Bar, Strip, StripRow } from '../../export/strip.ts';
import { stripOf } from '../../export/strip.ts';
import { keepsAnother } from '../plan/numbers.ts';
import { Hatch } from '../shared/Hatch.tsx';
import type { PartProps } from './part.ts';
import { StripKey } from './StripKey.tsx';
import { STRIP_HATCH } from './strip-hatch.ts';
import { weekWords } from './words.ts';

/** Widths below this share of the strip would vanish. */
const LEAST = 0.001;

const share = (at: number): string => `${(at * 100).toFixed(3)}%`;
const wide = ({ from, to }: Pick<Bar, 'from' | 'to'>): string => share(Math.max(LEAST, to - from));

/** The weeks along the edge, and the hatch that every row fills its bands with. */
function Weeks({ marks }: Pick<Strip, 'marks'>) {
  return (
    <div class="strip-row strip-head" aria-hidden="true">
      <span class="quiet small strip-name">Week</span>
      <svg class="strip-drawing strip-scale" width="100%" height="20" aria-hidden="true">
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

/** A row's drawing as high as the row: what is drawn at the height of its middle lies on bands and weeks that run through. */
function Track({ strip: { marks, out }, children }: { strip: Strip; children: ComponentChildren }) {
  return (
    <span class="strip-track">
      <svg class="strip-drawing" width="100%" height="100%" aria-hidden="true">
        {out.map((band) => (
          <rect
            key={band.id}
            x={share(band.from)}
            width={wide(band)}
            height="100%"
            fill={`url(#${STRIP_HATCH})`}
          />
        ))}
        {marks.map(({ week, at }) => (
          <line key={week} class="week-line" x1={share(at)} x2={share(at)} y1="0" y2="100%" />
        ))}
        <svg y="50%" overflow="visible" aria-hidden="true">
          {children}
        </svg>
      </svg>
    </span>
  );
}

/** Early and late ends of a stage as the ticks of a dimension. */
function Ends({ row }: { row: StripRow }) {
  return (
    <g class="strip-ends">
      <line x1={share(row.early)} x2={share(row.late)} y1="-2" y2="-2" />
      {[row.early, row.late].map((at, i) => (
        <line key={i} x1={share(at)} x2={share(at)} y1="-7" y2="3" />
      ))}
    </g>
  );
}

function Task({ task, isNext }: { task: StripRow['tasks'][number]; isNext: boolean }) {
  const [from, to] = [share(task.from), share(task.to)];
  return (
    <>
      <rect
        class={isNext ? 'strip-task is-next' : 'strip-task'}
        x={from}
        width={wide(task)}
        y="-10"
        height="16"
      />
      {task.critical ? <line class="strip-chain" x1={from} x2={to} y1="9.5" y2="9.5" /> : null}
    </>
  );
}

function StageTrack({ row, strip, next }: { row: StripRow; strip: Strip; next: string | undefined }) {
  const left = row.tasks.filter(({ done }) => !done);
  return (
    <Track strip={strip}>
      <line class="strip-reach" x1={share(row.from)} x2={share(row.to)} y1="-2" y2="-2" />
      {left.map((task) => (
        <Task key={task.id} task={task} isNext={task.id === next} />
      ))}
      {left.length > 0 ? <Ends row={row} /> : null}
    </Track>
  );
}

function ParcelTrack({ parcel, strip }: { parcel: Bar; strip: Strip }) {
  const [from, to] = [share(parcel.from), share(parcel.to)];
  return (
    <Track strip={strip}>
      <line class="parcel-way" x1={from} x2={to} />
      <circle class="parcel-sent" cx={from} r="3" />
      <rect class="parcel-here" x={to} width="7" height="7" transform="translate(-3.5 -3.5)" />
    </Track>
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
            <span class="strip-name">{parcel.name}</span>
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
