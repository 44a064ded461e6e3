import type { Bar, ChoiceSwing, SwingEnd } from '../../../calc/choosing.ts';
import { decisionById } from '../../../calc/guide.ts';
import { placeOfQuestion } from '../../shared/question-place.ts';
import { Lines } from '../../shared/TrackScale.tsx';
import type { Track } from '../../shared/track.ts';
import { KINDS, type Kind, optionName, saySwing } from './kinds.ts';

const BAR = 15;
const TOP = 4;
const GAP = 6;

interface PieceProps {
  readonly kind: Kind;
  readonly track: Track;
}

function Piece({
  kind,
  track,
  from,
  by,
  y,
  tone,
}: PieceProps & { from: number; by: number; y: number; tone: string }) {
  const { shown } = KINDS[kind];
  const [a, b] = [track.at(shown(from)), track.at(shown(by))];
  return (
    <>
      <rect class={tone} x={`${Math.min(a, b)}%`} width={`${Math.abs(b - a)}%`} y={y} height={BAR} />
      <text
        class="bold"
        x={`${b}%`}
        dx={by < from || (by === from && tone === 'swing-less') ? -5 : 5}
        y={y + 12}
        text-anchor={by < from || (by === from && tone === 'swing-less') ? 'end' : 'start'}
      >
        {saySwing(kind, by)}
      </text>
    </>
  );
}

/** The bar of one choice: what may be chosen, and below it, hollow, what other answers stand in the way of. */
function ChoiceBar({ kind, track, bar, name }: PieceProps & { bar: Bar; name: string }) {
  const { least, most, blockedLeast, blockedMost } = bar;
  const hollow = [blockedLeast, blockedMost].filter((end) => end !== undefined);
  const height = TOP + BAR + (hollow.length > 0 ? GAP + BAR : 0) + TOP;
  const below = TOP + BAR + GAP;
  const pieces = { kind, track };
  const blocked = hollow.map(({ by }) => `, ${saySwing(kind, by)} blocked`).join('');
  return (
    <svg
      class="drawing swing-bar"
      role="img"
      aria-label={`${name}: ${saySwing(kind, least.by)} to ${saySwing(kind, most.by)}${blocked}`}
      width="100%"
      height={height}
    >
      <Lines track={track} centre={0} height={height} />
      <Piece {...pieces} from={0} by={least.by} y={TOP} tone="swing-less" />
      <Piece {...pieces} from={0} by={most.by} y={TOP} tone="swing-more" />
      {blockedLeast ? (
        <Piece {...pieces} from={least.by} by={blockedLeast.by} y={below} tone="swing-hollow" />
      ) : null}
      {blockedMost ? (
        <Piece {...pieces} from={most.by} by={blockedMost.by} y={below} tone="swing-hollow" />
      ) : null}
    </svg>
  );
}

/** Why a hollow end cannot be had as things stand, and the answer that would have to change. */
function Blocked({ decision, end }: { decision: string; end: SwingEnd }) {
  const [reason] = end.blocked;
  const other = reason?.clash[0];
  return (
    <p class="small swing-blocked">
      {optionName(decision, end.option)} is blocked: {reason?.say}{' '}
      {other ? (
        <a href={placeOfQuestion(other)} data-keep-path>
          Look at: {decisionById(other)?.name}
        </a>
      ) : null}
    </p>
  );
}

export function ChoiceRow({ kind, track, choice }: PieceProps & { choice: ChoiceSwing }) {
  const { decision } = choice;
  const bar = choice[kind];
  const name = decisionById(decision)?.name ?? decision;
  const [low, high] = [optionName(decision, bar.least.option), optionName(decision, bar.most.option)];
  return (
    <li class="swing-row">
      <div class="swing-name">
        <a href={placeOfQuestion(decision)} data-keep-path>
          {name}
        </a>
        <span class="task-note">
          {low === high ? low : `${low} to ${high.charAt(0).toLowerCase()}${high.slice(1)}`}
        </span>
      </div>
      <ChoiceBar kind={kind} track={track} bar={bar} name={name} />
      {[bar.blockedLeast, bar.blockedMost].map((end) =>
        end ? <Blocked key={end.option} decision={decision} end={end} /> : null,
      )}
    </li>
  );
}
