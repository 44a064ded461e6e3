import type { Check } from '../../calc/core/check.ts';
import type { Report } from '../../calc/evaluate.ts';
import { decisionById } from '../../calc/guide.ts';
import { counted, moneyRange } from '../shared/format.ts';
import { marginText } from '../shared/margin.ts';
import { questionPlace, to } from '../shared/places.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { Limits, Side } from '../why/CheckSides.tsx';
import { QuestionLink } from './QuestionLink.tsx';
import { tallyOf } from './tally.ts';

const SHOWN = 3;

const GRAVE = ['stop', 'look'] as const;

/** A check that asks for something: what you have, the limit, and the room between. */
function Grave({ check }: { check: Check }) {
  return (
    <li class="card-check">
      <ResultMark result={check.result} /> {check.label}: <Side check={check} side="value" />,{' '}
      <Limits check={check} />. {marginText(check)}
    </li>
  );
}

function GraveChecks({ checks }: { checks: readonly Check[] }) {
  const grave = GRAVE.flatMap((result) => checks.filter((check) => check.result === result));
  if (grave.length === 0) return null;
  return (
    <ul class="card-checks">
      {grave.slice(0, SHOWN).map((check) => (
        <Grave key={check.id} check={check} />
      ))}
      {grave.length > SHOWN ? <li>And {counted(grave.length - SHOWN, 'more check')}.</li> : null}
    </ul>
  );
}

/** How many checks and findings are in order, and where to read the rest. */
export function CardChecks({ report }: { report: Report }) {
  const { ok, notYet, look, stop } = tallyOf(report);
  const found = report.findings.filter(({ level }) => level === 'stop');
  return (
    <section class="card-section">
      <h3>Checks and findings</h3>
      <ul class="card-checks">
        <li>
          <ResultMark result="ok" word={`${ok} ok`} />
        </li>
        <li>
          <ResultMark result="look" word={`${look.length} look`} />
        </li>
        <li>
          <ResultMark result="stop" word={`${stop.length} stop`} empty={stop.length === 0} />
        </li>
        {notYet > 0 ? (
          <li>
            <ResultMark result="not-yet" word={`${notYet} not yet: a figure is missing`} />
          </li>
        ) : null}
      </ul>
      {found.slice(0, SHOWN).map(({ id, say }) => (
        <p key={id}>{say}</p>
      ))}
      <GraveChecks checks={report.checks} />
      <p>
        <a href={to('plan/')} data-keep-path>
          Read them in the plan
        </a>
      </p>
    </section>
  );
}

/** What is still open, and the first questions of it. */
export function CardOpen({ report }: { report: Report }) {
  const open = report.openQuestions.flatMap((id) => decisionById(id) ?? []);
  const asked = open.filter(({ place }) => place === 'guide');
  const facts = open.length - asked.length;
  return (
    <section class="card-section">
      <h3>Still open: {counted(asked.length, 'question')}</h3>
      {asked.length > 0 ? (
        <ul class="card-open">
          {asked.slice(0, SHOWN).map(({ id, name }) => (
            <li key={id}>
              <QuestionLink href={questionPlace(id)}>{name}</QuestionLink>
            </li>
          ))}
        </ul>
      ) : null}
      {facts > 0 ? (
        <p>
          And {counted(facts, 'fact')} about{' '}
          <a href={to('lathe/')} data-keep-path>
            your lathe and workshop
          </a>
          .
        </p>
      ) : null}
    </section>
  );
}

/** Money paid again every year stands apart from what is paid once. */
export function CardYearly({ report }: { report: Report }) {
  const [low, , high] = report.yearly;
  if (high <= 0) return null;
  return (
    <section class="card-section">
      <h3>Every year, apart from all this</h3>
      <p>{moneyRange(low, high)} a year</p>
    </section>
  );
}
