import { useStore } from '@nanostores/preact';
import type { Pair, PairSide } from '../../calc/comparing.ts';
import { $shown, toShown } from '../shared/currency.ts';
import { hoursMark, moneyMark, ofTwenty } from '../shared/format.ts';
import { Rod } from '../shared/Rod.tsx';
import type { Called } from './names.ts';
import { type Measure, saySide, sayTie } from './pair-words.ts';

interface Sides {
  readonly measure: Measure;
  readonly side: PairSide;
  readonly a: string;
  readonly b: string;
}

const WORDS = {
  money: { less: 'cheaper', more: 'dearer', heard: 'Dollars', mark: moneyMark },
  hours: { less: 'quicker', more: 'slower', heard: 'Hours', mark: hoursMark },
} as const;

/** "+$200", "same", "−$200". */
function signedMark(measure: Measure, n: number): string {
  if (n === 0) return 'same';
  return `${n > 0 ? '+' : '−'}${WORDS[measure].mark(Math.abs(n))}`;
}

/** The twenty differences on a rod around "same". */
function TwentyDifferences({ measure, side, a, b }: Sides) {
  const shown = (n: number) => (measure === 'money' ? toShown(n) : n);
  const { less, more, heard } = WORDS[measure];
  const values = side.twenty.map(shown);
  const said = values.map((value) => signedMark(measure, value)).join(', ');
  return (
    <figure class="compare-rod">
      <Rod
        values={values}
        limit={0}
        format={(n) => signedMark(measure, n)}
        label={`${a} less ${b}, ${measure}`}
        unitWord={heard}
        width={328}
        sides={[
          `${a} ${less} in ${side.below}`,
          `${a} ${more} in ${side.above}`,
          `${heard} of ${a} less those of ${b}, in the same 20 ways: ${a} is ${more} in ${ofTwenty(side.above)}, ${less} in ${side.below}.`,
        ]}
      />
      <figcaption class="small quiet">
        {a} less {b} in the same 20 ways: right of “same”, {a} is {more}.
      </figcaption>
      <details class="small no-print">
        <summary>The twenty as figures</summary>
        <p>{said}.</p>
      </details>
    </figure>
  );
}

interface Props {
  readonly pair: Pair;
  readonly a: Called;
  readonly b: Called;
  /** Names of the rows, besides money and hours, in which the two differ. */
  readonly rows: readonly string[];
}

/** Two columns against each other, in the same builds: in words, and as the twenty differences. */
export function PairInWords({ pair, a, b, rows }: Props) {
  useStore($shown);
  const tie = sayTie(pair, rows);
  return (
    <>
      <p class="verdict">{saySide('money', pair.money, a.letter, b.letter)}</p>
      <p class="verdict">{saySide('hours', pair.hours, a.letter, b.letter)}</p>
      {tie ? (
        <p>
          <b>{tie}</b>
        </p>
      ) : null}
      <div class="compare-rods">
        {pair.money.same < 20 ? (
          <TwentyDifferences measure="money" side={pair.money} a={a.letter} b={b.letter} />
        ) : null}
        {pair.hours.same < 20 ? (
          <TwentyDifferences measure="hours" side={pair.hours} a={a.letter} b={b.letter} />
        ) : null}
      </div>
    </>
  );
}
