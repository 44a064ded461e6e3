import type { Report } from '../../calc/evaluate.ts';
import { decisionById } from '../../calc/guide.ts';
import { sayAnswer } from '../receipts.ts';
import { openWords } from '../shared/open-counts.ts';
import { lathePlace, questionPlace, to } from '../shared/places.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { choiceOf } from './order.ts';
import { tallyOf } from './tally.ts';

function Said({ title, none, words }: { title: string; none: string; words: readonly string[] }) {
  return (
    <section>
      <h3>{title}</h3>
      {words.length === 0 ? <p class="quiet">{none}</p> : null}
      <ul>
        {words.map((say) => (
          <li key={say}>{say}</li>
        ))}
      </ul>
    </section>
  );
}

function Open({ report }: { report: Report }) {
  const open = report.openQuestions.flatMap((id) => decisionById(id) ?? []);
  return (
    <section>
      <h3>You are assuming</h3>
      {open.length === 0 ? <p class="quiet">Nothing: every question that arises is answered.</p> : null}
      <ul class="assuming">
        {open.map((decision) => (
          <li key={decision.id}>
            <a
              href={
                decision.place === 'lathe' ? lathePlace(decision.id) : questionPlace(decision.id, 'check')
              }
              data-keep-path
            >
              {decision.name}
            </a>
            : {sayAnswer(decision, choiceOf(report, decision.id)?.options ?? [])}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Checked({ report }: { report: Report }) {
  const { stop, look } = tallyOf(report);
  const open = openWords(report);
  return (
    <>
      <p class="check-marks">
        <ResultMark result="stop" word={`${stop.length} stop`} empty={stop.length === 0} />
        <ResultMark result="look" word={`${look.length} look`} />
        <ResultMark result="not-yet" word={open === '' ? 'nothing open' : `open: ${open}`} />
      </p>
      <div class="grid-halves">
        <Said title="Stops" none="Nothing stops this path." words={stop} />
        <Said title="Look again" none="Nothing to look at again." words={look} />
      </div>
      <Open report={report} />
      <p class="button-row">
        <a class="button primary" href={to('plan/')} data-keep-path>
          Make the plan
        </a>
        <a href={to('ways/')} data-keep-path>
          Which answers keep to your limits: the ways through
        </a>
      </p>
    </>
  );
}

/** The last look before the plan: what stops it, what to look at again, what is only assumed. */
export function CheckAnswers({ report }: { report: Report | undefined }) {
  return (
    <section class="rule-section">
      <h2>Check your answers</h2>
      {report ? (
        <Checked report={report} />
      ) : (
        <p>
          When the page has worked out your path, it says here what stops it, what to look at again and what
          it assumes.
        </p>
      )}
    </section>
  );
}
