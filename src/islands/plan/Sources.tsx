import type { Report } from '../../calc/evaluate.ts';
import { plain } from '../shared/format.ts';
import { to } from '../shared/places.ts';

/** What the figures rest on, and how sure they are. */
export function Sources({ report }: { report: Report }) {
  const { id, date, basis } = report.edition;
  return (
    <section class="rule-section" id="sources" tabIndex={-1}>
      <h2>What the figures rest on</h2>
      <ul>
        <li>
          Prices: edition {id} of {date}. {basis} US dollars, before freight, tax and duty. An edition is
          never changed after it is published, so this link shows the same figures next year.
        </li>
        <li>
          Hours: spare-time hours of a careful first-time converter, from the talk of the trade. Low has done
          it before.
        </li>
        <li>Chances: judgement, not statistics. Read them as about so many of 20.</li>
        <li>
          Checks: published formulas where there is one; sizes of nuts and limits of controls from memory. The
          part in your hand and its data sheet decide.
        </li>
        <li>
          The ranges hold 2,000 builds,{' '}
          {report.waysOfAnswering === 1
            ? 'all of these answers'
            : `spread over ${plain(report.waysOfAnswering)} ways of answering the open questions`}
          . <a href={to('how-the-estimate-is-made/')}>How the estimate is made</a>.
        </li>
      </ul>
    </section>
  );
}
