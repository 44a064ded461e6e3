import { useStore } from '@nanostores/preact';
import type { ChoiceSwing } from '../../calc/choosing.ts';
import { decisionById } from '../../calc/guide.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { middleHalf, moneyDifference, moneyRange } from '../shared/format.ts';
import { placeOfQuestion } from '../shared/question-place.ts';
import { $path, $report } from '../stores.ts';

/** "from $980 less to $440 more than the plan takes now"; one end where the other is what the plan takes. */
export function saySwing({ money: { least, most } }: ChoiceSwing): string {
  const [low, high] = [moneyDifference(least.by), moneyDifference(most.by)];
  const nothing = moneyDifference(0);
  if (low === nothing && high === nothing) return 'little in money';
  if (high === nothing) return `up to ${low} than the plan takes now`;
  if (low === nothing) return `up to ${high} than the plan takes now`;
  return `from ${low} to ${high} than the plan takes now`;
}

function Swing({ swing }: { swing: ChoiceSwing }) {
  const decision = decisionById(swing.decision);
  return (
    <li>
      <a href={placeOfQuestion(swing.decision)} data-keep-path>
        {decision?.ask ?? swing.decision}
      </a>{' '}
      <span class="quiet">{saySwing(swing)}</span>
    </li>
  );
}

function Reasons({ swings }: { swings: readonly ChoiceSwing[] }) {
  if (swings.length === 0) {
    return <p>Every question is answered. What is left of the width is price, luck and learning.</p>;
  }
  return (
    <>
      <p>It is this wide because {swings.length === 1 ? 'this is' : 'these are'} open, the widest first:</p>
      <ol class="quick-open">
        {swings.map((swing) => (
          <Swing key={swing.decision} swing={swing} />
        ))}
      </ol>
      <p class="quiet small">
        Each alone, typical money; together they may differ. Prices and luck add the rest.
      </p>
    </>
  );
}

/** The range as it stands, and the open questions that widen it most. */
export function WideBecause() {
  const path = useStore($path);
  const report = useStore($report);
  const { answer, isOld } = useAnswer('widest', path, report !== undefined);
  const half = report && middleHalf(report.money.twenty);
  return (
    <section class="rule-page">
      <h2>Why the answer is this wide</h2>
      {half ? (
        <p>
          Half of the ways this could turn out cost <b>{moneyRange(half.from, half.to)}</b>.
        </p>
      ) : null}
      <div class="quick-because" aria-busy={answer === undefined || isOld}>
        {answer ? <Reasons swings={answer} /> : <p class="quiet">Looking which questions widen it most …</p>}
      </div>
    </section>
  );
}
