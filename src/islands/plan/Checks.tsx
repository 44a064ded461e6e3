import { useStore } from '@nanostores/preact';
import type { Check } from '../../calc/core/check.ts';
import type { Report } from '../../calc/evaluate.ts';
import { $units } from '../preferences.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { QuestionLinks } from './QuestionLinks.tsx';
import { marginText, quantityText } from './words.ts';

const HEADS = ['Check', 'Yours', 'Limit', 'Margin', 'Result'];

function Row({ check }: { check: Check }) {
  const units = useStore($units);
  const { label, value, limit, sense, result, remedy } = check;
  return (
    <tr {...asRow} class={`is-${result}`}>
      <th {...asRowHead}>
        {label}
        {result === 'ok' ? null : <span class="task-note">{remedy}</span>}
        {result === 'ok' ? null : <QuestionLinks decisions={check.decisions} />}
      </th>
      <td {...asCell} data-label="Yours">
        {value ? quantityText(value, units) : 'not known yet'}
      </td>
      <td {...asCell} data-label="Limit">
        {limit
          ? `${quantityText(limit, units)} ${sense === 'at-most' ? 'at most' : 'at least'}`
          : 'not known yet'}
      </td>
      <td {...asCell} data-label="Margin" class={check.margin === undefined ? 'is-blank' : undefined}>
        {marginText(check)}
      </td>
      <td {...asCell} data-label="Result">
        <ResultMark result={result} />
      </td>
    </tr>
  );
}

/** Whether the pieces fit each other: what you have, the limit, and the room between. */
export function Checks({ report }: { report: Report }) {
  return (
    <section class="rule-section" id="checks" tabIndex={-1}>
      <h2>Checks</h2>
      {report.checks.length === 0 ? <p>No check arises on this path.</p> : null}
      <table class="table-stack checks" {...asTable} aria-label="Checks">
        <thead>
          <tr {...asRow}>
            {HEADS.map((head) => (
              <th key={head} {...asColumnHead}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {report.checks.map((check) => (
            <Row key={check.id} check={check} />
          ))}
        </tbody>
      </table>
    </section>
  );
}
