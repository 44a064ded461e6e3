import { useStore } from '@nanostores/preact';
import type { ChoiceView, Report } from '../../calc/evaluate.ts';
import { facts } from '../../calc/facts.ts';
import { decisionById } from '../../calc/guide.ts';
import { saidFigure } from '../lathe/units.ts';
import { $units } from '../preferences.ts';
import { FoldButton, Folded, useFold } from '../shared/Fold.tsx';
import { counted } from '../shared/format.ts';
import { lathePlace } from '../shared/places.ts';
import { placeOfQuestion } from '../shared/question-place.ts';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { choiceText } from './words.ts';

function OpenRow({ choice }: { choice: ChoiceView }) {
  return (
    <tr {...asRow}>
      <th {...asRowHead}>
        <a href={placeOfQuestion(choice.decision)} data-keep-path>
          {decisionById(choice.decision)?.name}
        </a>
      </th>
      <td {...asCell} data-label="Assumed">
        {choiceText(choice)}
      </td>
      <td {...asCell} data-label="Why">
        {choice.why}
      </td>
    </tr>
  );
}

function Open({ report }: { report: Report }) {
  const open = new Set(report.openQuestions);
  const fold = useFold();
  if (open.size === 0) return <p>Every question that arises is answered.</p>;
  return (
    <>
      <p>The tasks and parts take one answer to an open question; the ranges take all that are allowed.</p>
      <FoldButton fold={fold} what={counted(open.size, 'open line')} />
      <table class={`table-stack foldable${fold.shutClass}`} {...asTable} aria-label="Open questions">
        <thead>
          <tr {...asRow}>
            <th {...asColumnHead}>Question</th>
            <th {...asColumnHead}>The plan takes</th>
            <th {...asColumnHead}>Why that one</th>
          </tr>
        </thead>
        <tbody>
          <Folded fold={fold}>
            {report.choices
              .filter(({ decision }) => open.has(decision))
              .map((choice) => (
                <OpenRow key={choice.decision} choice={choice} />
              ))}
          </Folded>
        </tbody>
      </table>
    </>
  );
}

function Typical({ report }: { report: Report }) {
  const units = useStore($units);
  const assumed = facts.filter(({ id }) => report.machine.facts[id]?.origin.kind === 'assumed');
  if (assumed.length === 0) return <p>Every figure of the lathe is your own.</p>;
  return (
    <>
      <p>
        <b>Typical figures of a {report.machine.size} lathe</b>, used until you{' '}
        <a href={lathePlace()} data-keep-path>
          give your own
        </a>
        :
      </p>
      <ul class="typical">
        {assumed.map(({ id, name, show }) => (
          <li key={id}>
            {name}: {saidFigure(report.machine.facts[id]?.value ?? 0, show, units)}
          </li>
        ))}
      </ul>
    </>
  );
}

/** What the plan takes for granted: answers not yet given and figures not yet measured. */
export function Assumptions({ report }: { report: Report }) {
  return (
    <section class="rule-section" id="assumptions" tabIndex={-1}>
      <h2>What is assumed</h2>
      <Open report={report} />
      <Typical report={report} />
    </section>
  );
}
