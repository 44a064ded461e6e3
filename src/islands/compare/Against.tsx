import { useId, useState } from 'preact/hooks';
import type { Comparison, Pair } from '../../calc/comparing.ts';
import { Boundary } from '../shared/Boundary.tsx';
import type { Called } from './names.ts';
import { PairInWords } from './Pairs.tsx';
import { saySide } from './pair-words.ts';
import { GROUPS, isSame, ROW_NAMES } from './rows.ts';
import { WhyDiffer } from './WhyDiffer.tsx';

interface Props {
  readonly comparison: Comparison;
  readonly called: readonly Called[];
  /** The two that stand side by side on a phone, or the first two. */
  readonly usual: readonly [number, number];
}

/** Rows besides money and hours in which two columns differ, by name. */
function differingRows({ columns }: Comparison, { a, b }: Pair): string[] {
  const two = [columns[a]!, columns[b]!];
  const [can, , wrong] = GROUPS.map(({ rows }) => rows.filter((id) => id !== 'lacks' && !isSame(id, two)));
  return [...(can ?? []), ...(wrong ?? [])].map((id) => ROW_NAMES[id]);
}

function Choice({
  pairs,
  called,
  at,
  onAt,
}: {
  pairs: readonly Pair[];
  called: readonly Called[];
  at: number;
  onAt: (at: number) => void;
}) {
  const id = useId();
  if (pairs.length < 2) return null;
  return (
    <p class="compare-which no-print">
      <label for={id}>Which two</label>{' '}
      <select id={id} value={at} onChange={(event) => onAt(Number(event.currentTarget.value))}>
        {pairs.map(({ a, b }, place) => (
          <option key={`${a} ${b}`} value={place}>
            {called[a]!.letter} and {called[b]!.letter}
          </option>
        ))}
      </select>
    </p>
  );
}

function OtherPairs({ pairs, called }: { pairs: readonly Pair[]; called: readonly Called[] }) {
  if (pairs.length === 0) return null;
  return (
    <ul class="list-plain small compare-others">
      {pairs.map(({ a, b, money }) => (
        <li key={`${a} ${b}`}>{saySide('money', money, called[a]!.letter, called[b]!.letter)}</li>
      ))}
    </ul>
  );
}

function Why({
  comparison,
  pair: { a, b },
  called,
}: {
  comparison: Comparison;
  pair: Pair;
  called: readonly Called[];
}) {
  const [one, other] = [comparison.columns[a]!, comparison.columns[b]!];
  const letters = [called[a]!.letter, called[b]!.letter] as const;
  if (one.kind === 'path' && other.kind === 'path' && one.path && other.path)
    return <WhyDiffer key={`${a} ${b}`} a={one.path} b={other.path} letters={letters} isOpen={a === 0} />;
  const not = one.kind === 'path' ? letters[1] : letters[0];
  return (
    <p>Why can be told answer by answer for two conversions. {not} is none: its rows above say what it is.</p>
  );
}

/** Two columns against each other: how often and by how much, and which answers make the difference. */
export function Against({ comparison, called, usual }: Props) {
  const [chosen, setChosen] = useState<number>();
  const { pairs } = comparison;
  const [left, right] = usual;
  const standing = pairs.findIndex(({ a, b }) => a === Math.min(left, right) && b === Math.max(left, right));
  const at = chosen !== undefined && chosen < pairs.length ? chosen : Math.max(0, standing);
  const pair = pairs[at];
  if (!pair) return null;
  const [a, b] = [called[pair.a]!, called[pair.b]!];
  return (
    <div class="compare-against">
      <section class="rule-section" id="why-they-differ" tabIndex={-1}>
        <h2>
          Why {a.letter} and {b.letter} differ, answer by answer
        </h2>
        <Choice pairs={pairs} called={called} at={at} onAt={setChosen} />
        <Boundary what="why they differ">
          <Why comparison={comparison} pair={pair} called={called} />
        </Boundary>
      </section>
      <section class="rule-section" id="two-by-two" tabIndex={-1} aria-label="Two by two">
        {comparison.editionsDiffer ? (
          <p class="small">
            Prices of different editions stand side by side here, and the 20 ways of one are not those of the
            other: take the counts as rough.
          </p>
        ) : null}
        <PairInWords pair={pair} a={a} b={b} rows={differingRows(comparison, pair)} />
        <OtherPairs pairs={pairs.filter((each) => each !== pair)} called={called} />
      </section>
    </div>
  );
}
