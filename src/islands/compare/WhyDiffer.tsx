import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import type { Share, WhyDiffer as Why } from '../../calc/comparing.ts';
import type { Path } from '../../calc/core/path.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { $units } from '../preferences.ts';
import { $shown } from '../shared/currency.ts';
import { counted, plain } from '../shared/format.ts';
import { exactly } from './exactly.ts';
import type { Measure } from './pair-words.ts';
import { sayPiece } from './piece-words.ts';
import { ShareTable } from './ShareTable.tsx';
import { tryAnswer } from './try-answer.ts';
import { Waterfall } from './Waterfall.tsx';

export interface WhyProps {
  /** The two paths, their letters, and whether the first is the open path, whose answers can be changed here. */
  readonly a: Path;
  readonly b: Path;
  readonly letters: readonly [a: string, b: string];
  readonly isOpen: boolean;
}

function Switch({ measure, onMeasure }: { measure: Measure; onMeasure: (measure: Measure) => void }) {
  return (
    <fieldset class="no-print">
      <legend class="visually-hidden">Told in</legend>
      <span class="segments">
        {(['money', 'hours'] as const).map((each) => (
          <label key={each}>
            <input
              type="radio"
              name="why-measure"
              checked={measure === each}
              onChange={() => onMeasure(each)}
            />
            <span>{each === 'money' ? 'Money' : 'Hours'}</span>
          </label>
        ))}
      </span>
    </fieldset>
  );
}

/** How far the shares can be trusted: every order counted, or a sample with its error. */
function sayMethod({ exact, orders, shares }: Why, measure: Measure): string {
  if (exact)
    return shares.length < 2
      ? ''
      : 'Every order of changing them is counted, so that none counts more than another.';
  const most = Math.max(0, ...shares.map(({ error }) => error?.[measure] ?? 0));
  const off = measure === 'money' ? `$${plain(Math.ceil(2 * most))}` : `${plain(2 * most + 0.05, 1)} h`;
  return `An approximation: ${shares.length} things differ, too many for every order, so ${orders} orders stand for all. A share may be off by about ${off}; the sum is exact.`;
}

function sayStill(why: Why, measure: Measure): string {
  const still = why.shares.filter((share) => share[measure] === 0).length;
  return still === 0
    ? ''
    : `${counted(still, 'difference', 'differences')} between them ${still === 1 ? 'moves' : 'move'} none of it.`;
}

function Told({
  why,
  measure,
  props,
  all,
  onAll,
}: {
  why: Why;
  measure: Measure;
  props: WhyProps;
  all: boolean;
  onAll: () => void;
}) {
  const units = useStore($units);
  const [a, b] = props.letters;
  const take = (share: Share) => tryAnswer(props.a, props.b, share.piece, sayPiece(share.piece, units));
  const { difference } = why[measure];
  const moving = why.shares.some((share) => share[measure] !== 0);
  return (
    <>
      <p class="small quiet">
        From {b}, typical, to {a}, typical; the largest first. Plain bars add, hatched ones take away, and
        together they make {exactly(measure, difference, true)}.{' '}
        {measure === 'money' ? 'Cents' : 'Hundredths'} are there only so that they add up.{' '}
        {sayMethod(why, measure)} {sayStill(why, measure)}
      </p>
      {moving ? (
        <Waterfall
          why={why}
          measure={measure}
          letters={props.letters}
          all={all}
          onAll={onAll}
          take={props.isOpen ? take : undefined}
        />
      ) : (
        <p>Nothing that differs between them moves the typical {measure}.</p>
      )}
      <ShareTable why={why} letters={props.letters} />
    </>
  );
}

/** Each differing answer's share of the difference between two plans, and a way to try it. */
export function WhyDiffer(props: WhyProps) {
  const [measure, setMeasure] = useState<Measure>('money');
  const [all, setAll] = useState(false);
  const { word } = useStore($shown);
  const { answer: why, isOld } = useAnswer('why-differ', props.a, true, props.b);
  if (!why) return <p role="status">Trying every order of the answers that differ …</p>;
  if (why.shares.length === 0) return <p>Nothing that you answered or measured differs between them.</p>;
  return (
    <div aria-busy={isOld}>
      <Switch measure={measure} onMeasure={setMeasure} />
      <Told why={why} measure={measure} props={props} all={all} onAll={() => setAll(!all)} />
      {word === 'dollars' ? null : (
        <p class="small quiet">Shares stand in US dollars, so that they add up to the cent.</p>
      )}
    </div>
  );
}
