import { useStore } from '@nanostores/preact';
import type { Share, WhyDiffer } from '../../calc/comparing.ts';
import { $units } from '../preferences.ts';
import { counted } from '../shared/format.ts';
import { Hatch } from '../shared/Hatch.tsx';
import { type Track, trackOf } from '../shared/track.ts';
import { exactly } from './exactly.ts';
import { Bar, type BarProps, End, HATCH, Head } from './FallBars.tsx';
import type { Measure } from './pair-words.ts';
import { keyOfPiece, sayPiece, sayShort } from './piece-words.ts';
import { DRAWN, type Step, sharesIn, stepsOf } from './waterfall.ts';

interface Props {
  readonly why: WhyDiffer;
  readonly measure: Measure;
  readonly letters: readonly [a: string, b: string];
  readonly all: boolean;
  readonly onAll: () => void;
  /** Takes a piece of the second into the first; undefined where the first is not the open path. */
  readonly take: ((share: Share) => void) | undefined;
}

function StepRow({
  step,
  track,
  measure,
  letters,
  take,
  smaller,
}: Omit<Props, 'why' | 'all' | 'onAll'> & { step: Step; track: Track; smaller: number }) {
  const units = useStore($units);
  const said = step.share && sayPiece(step.share.piece, units);
  const words = said ? sayShort(said) : `and ${counted(smaller, 'smaller one')}`;
  return (
    <li class="fall-row">
      <p>
        {words}
        <span class="visually-hidden">: {exactly(measure, step.by, true)}</span>
      </p>
      <Bar measure={measure} track={track} step={step} />
      {take && step.share && said ? (
        <button type="button" class="link-button no-print" onClick={() => take(step.share!)}>
          try {letters[1]}’s answer
          <span class="visually-hidden">
            {' '}
            in {letters[0]}: {said.name}
          </span>
        </button>
      ) : (
        <span />
      )}
    </li>
  );
}

function EndRow({ words, ...end }: BarProps & { value: number; isLast: boolean; words: string }) {
  return (
    <li class="fall-row">
      <p>
        <b>{words}</b>
        <span class="visually-hidden">: {exactly(end.measure, end.value)}</span>
      </p>
      <End {...end} />
      <span />
    </li>
  );
}

/** From the typical figure of the second path to that of the first, a bar for each difference. */
export function Waterfall({ why, measure, letters, all, onAll, take }: Props) {
  const { a, b } = why[measure];
  const steps = stepsOf(measure, why.shares, why[measure], all);
  const track = trackOf([a, b, ...steps.map(({ to }) => to)]);
  const moving = sharesIn(measure, why.shares).length;
  const rest = { measure, letters, take };
  return (
    <>
      <svg class="fall-defs" width="0" height="0" aria-hidden="true">
        <defs>
          <Hatch id={HATCH} tone="blue" pitch={6} weight={0.8} />
        </defs>
      </svg>
      <div class="fall-row fall-head">
        <span />
        <Head measure={measure} track={track} />
        <span />
      </div>
      <ol class="list-plain fall">
        <EndRow measure={measure} track={track} value={b} isLast={false} words={`${letters[1]}, typical`} />
        {steps.map((step) => (
          <StepRow
            key={step.share ? keyOfPiece(step.share.piece) : 'rest'}
            {...rest}
            step={step}
            track={track}
            smaller={moving - steps.length + 1}
          />
        ))}
        <EndRow measure={measure} track={track} value={a} isLast words={`${letters[0]}, typical`} />
      </ol>
      {moving > DRAWN + 1 ? (
        <p class="no-print">
          <button type="button" class="link-button" aria-expanded={all} onClick={onAll}>
            {all ? 'Draw the largest only' : `Draw all ${moving}`}
          </button>
        </p>
      ) : null}
    </>
  );
}
