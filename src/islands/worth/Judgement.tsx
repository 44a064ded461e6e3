import { useStore } from '@nanostores/preact';
import type { Signal, Worth } from '../../calc/choosing.ts';
import type { Report } from '../../calc/evaluate.ts';
import { factById } from '../../calc/facts.ts';
import { decisionById } from '../../calc/guide.ts';
import { isOutline } from '../plan/numbers.ts';
import { Outline } from '../plan/Outline.tsx';
import { $shown } from '../shared/currency.ts';
import { hoursRange, middleHalf } from '../shared/format.ts';
import { lathePlace } from '../shared/places.ts';
import { placeOfQuestion } from '../shared/question-place.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { sentenceText } from '../shared/sentence.ts';
import { halfMoney } from './words.ts';

interface Props {
  readonly report: Report;
  readonly worth: Worth;
}

function Rest({ id }: { id: string }) {
  const decision = decisionById(id);
  if (decision)
    return (
      <a href={placeOfQuestion(id)} data-keep-path>
        {decision.name}
      </a>
    );
  const fact = factById(id);
  if (fact)
    return (
      <a href={lathePlace()} data-keep-path>
        {fact.name}
      </a>
    );
  return <a href="#parts">the parts you named</a>;
}

function Against({ signal }: { signal: Signal }) {
  return (
    <li class="signal">
      <ResultMark result={signal.level} word={signal.level === 'stop' ? 'we would not' : 'think again'} />
      <p>
        {sentenceText(signal.say)}{' '}
        <span class="small">
          Rests on:{' '}
          {signal.rests.map((id, at) => (
            <span key={id}>
              {at > 0 ? ', ' : ''}
              <Rest id={id} />
            </span>
          ))}
        </span>
      </p>
    </li>
  );
}

/** Said where the question that a judgement stands on is still open. */
function NoJudgement({ report }: { report: Report }) {
  const { from, to } = middleHalf(report.hours.twenty);
  return (
    <p class="verdict">
      You have not said yet what the lathe should make, so there is no judgement. A plan on typical answers
      costs {halfMoney(report.money.twenty)} and takes {hoursRange(from, to)} in half of the ways.{' '}
      <a href={placeOfQuestion('purpose')} data-keep-path>
        Say what it should make
      </a>
      .
    </p>
  );
}

function Said({ worth }: { worth: Worth }) {
  return (
    <>
      {worth.verdict.say.map(sentenceText).map((say) => (
        <p key={say} class="verdict">
          {say}
        </p>
      ))}
    </>
  );
}

/** What we would do and on which conditions, and what speaks against converting at all. */
export function Judgement({ report, worth }: Props) {
  useStore($shown);
  const isOpen = report.openQuestions.includes('purpose');
  return (
    <>
      {isOutline(report) ? <Outline report={report} /> : null}
      <section class="worth-verdict" aria-label="Verdict">
        {isOpen ? <NoJudgement report={report} /> : <Said worth={worth} />}
      </section>
      <section class="rule-section" id="against" tabIndex={-1}>
        <h2>What speaks against converting</h2>
        {worth.signals.length > 0 ? (
          <ul class="list-plain">
            {worth.signals.map((signal) => (
              <Against key={signal.id} signal={signal} />
            ))}
          </ul>
        ) : (
          <p>
            {isOpen || (report.path.families ?? []).length === 0
              ? 'Nothing that you said so far. What you make and how often has not been said.'
              : 'Nothing that you said.'}
          </p>
        )}
      </section>
    </>
  );
}
