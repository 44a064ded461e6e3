import { DimensionMark } from './DimensionLine.tsx';
import { Hatch } from './Hatch.tsx';
import { textWidth } from './span.ts';
import { layoutStages, outOfUseReach, type Stage, type StagePlace } from './stage-layout.ts';

export { layoutStages, type Stage } from './stage-layout.ts';

export interface StageBarProps {
  stages: Stage[];
  /** Words for the stretch without the lathe: "lathe out of use, on and off: 12–18 weeks". */
  outOfUseText?: string;
  width?: number;
}

const TOP = 26;
const HIGH = 28;
const LINE = 16;
/** Width that a sheet of paper or a tablet carries with its words still legible. */
const NARROW = 700;

function stateClass(stage: Stage): string {
  return stage.state ? `stage is-${stage.state}` : 'stage';
}

function numeralClass(stage: Stage, hatched: boolean): string {
  if (stage.state === 'done') return 'stage-numeral on-done';
  return hatched ? 'stage-numeral halo' : 'stage-numeral';
}

function Block({ place, hatch }: { place: StagePlace; hatch: string }) {
  const { stage, x1, x2 } = place;
  const hatched = stage.outOfUse && !stage.state;
  return (
    <>
      <rect class={stateClass(stage)} x={x1} y={TOP} width={x2 - x1} height={HIGH} />
      {hatched ? <rect x={x1} y={TOP} width={x2 - x1} height={HIGH} fill={`url(#${hatch})`} /> : null}
      <text class={numeralClass(stage, hatched)} x={x1 + 5} y={TOP + 19}>
        {stage.numeral}
      </text>
    </>
  );
}

const labelY = (place: StagePlace) => TOP + HIGH + 15 + place.line * LINE;

/** From a stage down to a label that had to stand lower; drawn first, so that labels lie over it. */
function Leader({ place }: { place: StagePlace }) {
  if (place.line === 0) return null;
  const x = place.x1 + 1;
  return <line class="leader-quiet" x1={x} x2={x} y1={TOP + HIGH} y2={labelY(place) - 4} />;
}

function Label({ place }: { place: StagePlace }) {
  const bold = place.stage.state === 'now' ? 'halo bold' : 'halo';
  return (
    <text class={bold} x={place.labelX} y={labelY(place)} font-size="12.5">
      {place.label}
    </text>
  );
}

/** A hold point; where the owner may also stop for good, its words say both and the triangle stays away. */
function Hold({ x, name, width }: { x: number; name: string; width: number }) {
  const near = Math.min(Math.max(x, textWidth(name) / 2), width - textWidth(name) / 2);
  return (
    <>
      <rect class="hold-gap" x={x - 5} y={TOP - 5} width="10" height={HIGH + 10} />
      {[x - 3, x + 3].map((at) => (
        <line key={at} class="hold" x1={at} x2={at} y1={TOP - 5} y2={TOP + HIGH + 5} />
      ))}
      <text x={near} y={TOP - 11} text-anchor="middle">
        {name}
      </text>
    </>
  );
}

function MayStop({ x, width, mute }: { x: number; width: number; mute: boolean }) {
  const near = Math.min(Math.max(x, 26), width - 26);
  return (
    <>
      <path class="may-stop" d={`M${x - 5} ${TOP - 9}h10l-5 8z`} />
      {mute ? null : (
        <text x={near} y={TOP - 13} text-anchor="middle">
          may stop
        </text>
      )}
    </>
  );
}

function notes(stage: Stage): string {
  const said = [
    stage.state === 'done' ? 'done' : stage.state === 'now' ? 'now' : '',
    stage.outOfUse ? 'lathe out of use' : '',
    stage.holdAfter ? `hold point ${stage.holdAfter} ends it` : '',
    stage.mayStopAfter ? 'you may stop after it' : '',
  ];
  return said.filter(Boolean).join('; ');
}

/** The same stages as words: read aloud everywhere, and shown instead of the bar on a phone. */
function StageList({ stages }: { stages: Stage[] }) {
  return (
    <ol class="stage-list">
      {stages.map((stage) => (
        <li key={stage.id}>
          <span class="numeral">{stage.numeral}</span>
          <span>{stage.name}</span>
          <span>{`${Math.round(stage.hours)} h`}</span>
          {notes(stage) ? <span class="stage-notes">{notes(stage)}</span> : null}
        </li>
      ))}
    </ol>
  );
}

interface BarProps {
  stages: Stage[];
  outOfUseText: string;
  width: number;
  kind: 'wide' | 'narrow';
}

/** Room that the words of a mark take on either side of it; none without a mark. */
function wordsBeside({ stage }: StagePlace): number {
  if (!stage.holdAfter) return stage.mayStopAfter ? 26 : 0;
  return textWidth(`${stage.mayStopAfter ? 'may stop, ' : ''}hold ${stage.holdAfter}`) / 2;
}

/** True where the words of a may-stop mark would run into those of a mark beside it; its triangle then stands alone. */
function isCrowded(places: StagePlace[], at: number): boolean {
  const here = places[at] as StagePlace;
  return places.some((other, i) => {
    const apart = Math.abs(other.x2 - here.x2);
    const yields = i < at || other.stage.holdAfter !== undefined;
    return i !== at && yields && wordsBeside(other) > 0 && apart < wordsBeside(other) + wordsBeside(here) + 4;
  });
}

function Marks({ places, at, width }: { places: StagePlace[]; at: number; width: number }) {
  const place = places[at] as StagePlace;
  const { holdAfter, mayStopAfter } = place.stage;
  return (
    <>
      <Label place={place} />
      {holdAfter ? (
        <Hold x={place.x2} name={`${mayStopAfter ? 'may stop, ' : ''}hold ${holdAfter}`} width={width} />
      ) : null}
      {mayStopAfter && !holdAfter ? (
        <MayStop x={place.x2} width={width} mute={isCrowded(places, at)} />
      ) : null}
    </>
  );
}

function Bar({ stages, outOfUseText, width, kind }: BarProps) {
  const places = layoutStages(stages, width);
  const lines = places.reduce((most, p) => Math.max(most, p.line + 1), 1);
  const reach = outOfUseReach(places);
  const foot = TOP + HIGH + 15 + lines * LINE + 6;
  const height = reach ? foot + 10 : foot - 14;
  const hatch = `stage-out-of-use-${kind}`;
  return (
    <svg
      class={`drawing stage-${kind}`}
      aria-hidden="true"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
    >
      <defs>
        <Hatch id={hatch} tone="ink" pitch={7} weight={0.25} />
      </defs>
      {places.map((place) => (
        <Leader key={place.stage.id} place={place} />
      ))}
      {places.map((place) => (
        <Block key={place.stage.id} place={place} hatch={hatch} />
      ))}
      {reach ? (
        <g class="dimension">
          <DimensionMark x1={reach.x1} x2={reach.x2} y={foot} text={outOfUseText} edge={width} />
        </g>
      ) : null}
      {places.map((place, at) => (
        <Marks key={place.stage.id} places={places} at={at} width={width} />
      ))}
    </svg>
  );
}

/**
 * The stages in order, each as long as its likely hours, with hold points and stopping places. Drawn for the
 * screen and once more for paper and tablets; on a phone the list of the same words takes its place.
 */
export function StageBar({ stages, outOfUseText = 'lathe out of use', width = 1200 }: StageBarProps) {
  return (
    <div class="stage-bar">
      <Bar kind="wide" stages={stages} outOfUseText={outOfUseText} width={width} />
      <Bar kind="narrow" stages={stages} outOfUseText={outOfUseText} width={NARROW} />
      <StageList stages={stages} />
    </div>
  );
}
