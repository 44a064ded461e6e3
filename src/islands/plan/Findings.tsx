import type { Finding, Report } from '../../calc/evaluate.ts';
import { decisionById } from '../../calc/guide.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { QuestionLinks } from './QuestionLinks.tsx';
import { choiceText } from './words.ts';

const MARK = { stop: 'stop', look: 'look', note: 'not-yet' } as const;
const WORD = { stop: 'stop', look: 'look', note: 'note' } as const;

function Row({ finding }: { finding: Finding }) {
  return (
    <li class={`finding is-${finding.level}`}>
      <ResultMark result={MARK[finding.level]} word={WORD[finding.level]} />
      <span>
        {finding.say} <QuestionLinks decisions={finding.decisions} />
      </span>
    </li>
  );
}

/** Answers that an earlier answer rules out: the plan stands on another one. */
function Clashes({ report }: { report: Report }) {
  return (
    <>
      {report.choices
        .filter(({ status }) => status === 'clash')
        .map((choice) => (
          <li key={choice.decision} class="finding is-look">
            <ResultMark result="look" word="decide again" />
            <span>
              {decisionById(choice.decision)?.name}: an earlier answer rules out what you chose. The plan
              takes {choiceText(choice)}. <QuestionLinks decisions={[choice.decision]} />
            </span>
          </li>
        ))}
    </>
  );
}

/** What the trade says about this set of choices: what stops it, what to look at again, and notes. */
export function Findings({ report }: { report: Report }) {
  const notes = report.findings.filter(({ level }) => level === 'note');
  const grave = report.findings.filter(({ level }) => level !== 'note');
  const clash = report.choices.some(({ status }) => status === 'clash');
  return (
    <section class="rule-section" id="findings" tabIndex={-1}>
      <h2>Stop and look</h2>
      {grave.length === 0 && !clash ? (
        <p>Nothing stops this path, and nothing asks for a second look.</p>
      ) : null}
      <ul class="list-plain findings">
        <Clashes report={report} />
        {grave.map((finding) => (
          <Row key={finding.id} finding={finding} />
        ))}
      </ul>
      {notes.length > 0 ? (
        <details>
          <summary>Notes on this path ({notes.length})</summary>
          <ul class="list-plain findings">
            {notes.map((finding) => (
              <Row key={finding.id} finding={finding} />
            ))}
          </ul>
        </details>
      ) : null}
    </section>
  );
}
