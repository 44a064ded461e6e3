import { useId, useState } from 'preact/hooks';
import type { Comparison, Pair } from '../../calc/comparing.ts';
import { Boundary } from '../shared/Boundary.tsx';
import type { Called } from './names.ts';
import { PairInWords } from './Pairs.tsx';
import { isTie, saySide } from './pair-words.ts';
import { GROUPS, isSame, ROW_NAMES } from './rows.ts';
import { WhyDiffer } from './WhyDiffer.tsx';

interface Props {
  readonly comparison: Comparison;
  readonly called: readonly Called[];
  /** The two that stand side by side on a phone. */
  readonly usual: readonly [number, number] | undefined;
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
        <li key={`${a} ${b}`}>
          {saySide('money', money, called[a]!.letter, called[b]!.letter)}
          {isTie(money) ? ' A tie.' : ''}
        </li>
      ))}
    </ul>
  );
}

interface TwoProps extends Pick<Props, 'comparison' | 'called'> {
  readonly pair: Pair;
}

/** Each differing answer's share, which only two conversions have. */
function Why({ comparison: { columns }, pair: { a, b }, called }: TwoProps) {
  const [one, other] = [columns[a]?.path, columns[b]?.path];
  if (!one || !other) return null;
  const letters = [called[a]!.letter, called[b]!.letter] as const;
  return (
    <section class="compare-why" aria-labelledby="why-they-differ">
      <h3 id="why-they-differ">
        Why {letters[0]} and {letters[1]} differ, answer by answer
      </h3>
      <Boundary what="why they differ">
        <WhyDiffer key={`${a} ${b}`} a={one} b={other} letters={letters} isOpen={a === 0} />
      </Boundary>
    </section>
  );
}

const areConversions = ({ columns }: Comparison, { a, b }: Pair): boolean =>
  columns[a]?.kind === 'path' && columns[b]?.kind === 'path';

/** The pair looked at until another is chosen: what a phone shows, else the first two conversions, whose answers can be told. */
function usualPair(comparison: Comparison, usual: Props['usual']): number {
  const { pairs } = comparison;
  if (usual) return pairs.findIndex(({ a, b }) => a === Math.min(...usual) && b === Math.max(...usual));
  return pairs.findIndex((pair) => areConversions(comparison, pair));
}

/** Two columns against each other: how often and by how much, and which answers make the difference. */
export function Against({ comparison, called, usual }: Props) {
  const [chosen, setChosen] = useState<number>();
  const { pairs } = comparison;
  const standing = Math.max(0, usualPair(comparison, usual));
  const at = chosen !== undefined && chosen < pairs.length ? chosen : standing;
  const pair = pairs[at];
  if (!pair) return null;
  const [a, b] = [called[pair.a]!, called[pair.b]!];
  const both = areConversions(comparison, pair);
  return (
    <section class="rule-section" id="two-by-two" tabIndex={-1}>
      <h2>
        {a.letter} and {b.letter}, weighed against each other
      </h2>
      <Choice pairs={pairs} called={called} at={at} onAt={setChosen} />
      <div class={both ? 'compare-against' : undefined}>
        {both ? <Why comparison={comparison} pair={pair} called={called} /> : null}
        <div>
          {comparison.editionsDiffer ? <OfEditions /> : null}
          <PairInWords pair={pair} a={a} b={b} rows={differingRows(comparison, pair)} />
          <OtherPairs pairs={pairs.filter((each) => each !== pair)} called={called} />
        </div>
      </div>
    </section>
  );
}

const OfEditions = () => (
  <p class="small">
    Prices of different editions stand side by side here, and the 20 ways of one are not those of the other:
    take the counts as rough.
  </p>
);
