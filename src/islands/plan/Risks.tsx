import type { Report, RiskRow } from '../../calc/evaluate.ts';
import { risks } from '../../content/told/risks.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { FoldButton, Folded, useFold } from '../shared/Fold.tsx';
import { chanceOfTwenty, counted, hours, hoursRange, money } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { NotHere } from '../shared/NotHere.tsx';
import { isAskedFor } from '../shared/places.ts';
import { ReadAbout } from '../shared/ReadAbout.tsx';
import { ResultMark } from '../shared/ResultMark.tsx';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { Why } from '../why/Why.tsx';
import { TickBox, Ticked } from './Glyphs.tsx';
import { OwnChance } from './OwnChance.tsx';
import { PaperRow } from './PaperRow.tsx';
import { priceRange } from './words.ts';

const HEADS = [
  'What may go wrong',
  'How often',
  'If it does',
  'On average',
  'Early sign',
  'What prevents it',
];

/** Money and hours, each on a line that does not break. */
function Both({ cost, time }: { cost: string; time: string }) {
  return (
    <span>
      <span class="unbroken">{cost}</span>, <span class="unbroken">{time}</span>
    </span>
  );
}

const onAverage = ({ counted: isSummed, expectedMoney, expectedHours }: RiskRow) =>
  isSummed ? <Both cost={money(expectedMoney)} time={hours(expectedHours)} /> : 'shown, in no total';

function NotesOnPaper({ risk }: { risk: RiskRow }) {
  const here = risk.levers.map(({ why }) => why).join('; ');
  return (
    <PaperRow across={6}>
      {risk.cause} {risk.effect} {here ? `Here: ${here}. ` : ''}Early sign: {risk.sign} <TickBox />
      <b>{risk.prevent}</b>
    </PaperRow>
  );
}

function Row({ risk }: { risk: RiskRow }) {
  return (
    <>
      <tr {...asRow} id={`risk-${risk.id}`}>
        <th {...asRowHead}>
          {risk.name}
          <span class="task-note">
            {risk.cause} {risk.effect}
          </span>
          {risk.levers.length > 0 ? (
            <span class="task-note">Here: {risk.levers.map(({ why }) => why).join('; ')}.</span>
          ) : null}
          <ReadAbout kind="risks" told={risks} id={risk.id} room={risk.subsystem} />
        </th>
        <td {...asCell} data-label="How often">
          <Why asked={{ kind: 'risk', id: risk.id }} name={`how often: ${risk.name}`}>
            {chanceOfTwenty(risk.chance)}
          </Why>
          {risk.theirs === undefined ? null : (
            <span class="task-note">your own; ours is {chanceOfTwenty(risk.ours)}</span>
          )}
          {risk.counted ? <OwnChance risk={risk} /> : null}
        </td>
        <td {...asCell} data-label="If it does">
          <Both cost={priceRange(risk.money)} time={hoursRange(risk.hours[0], risk.hours[2])} />
        </td>
        <td {...asCell} data-label="On average">
          {risk.counted ? (
            <Why asked={{ kind: 'risk', id: risk.id }} name={`on average: ${risk.name}`}>
              {onAverage(risk)}
            </Why>
          ) : (
            onAverage(risk)
          )}
        </td>
        <td {...asCell} data-label="Early sign">
          {risk.sign}
        </td>
        <td {...asCell} data-label="Prevent">
          <Ticked>{risk.prevent}</Ticked>
        </td>
      </tr>
      <NotesOnPaper risk={risk} />
    </>
  );
}

function Injury({ risk }: { risk: RiskRow }) {
  return (
    <li class="finding is-stop" id={`risk-${risk.id}`}>
      <ResultMark result="stop" word="injury" />
      <span>
        <b>{risk.name}.</b> {risk.effect} {risk.prevent} <span class="quiet">Sign: {risk.sign}</span>
        <ReadAbout kind="risks" told={risks} id={risk.id} room={risk.subsystem} />
      </span>
    </li>
  );
}

/** What may go wrong: first what can hurt somebody, then the rest by what it costs on average. */
export function Risks({ report }: { report: Report }) {
  const injuries = report.risks.filter(({ injury }) => injury);
  const others = report.risks.filter(({ injury }) => !injury);
  const ids = others.map(({ id }) => id);
  const fold = useFold(isAskedFor('risk', ids));
  return (
    <section class="rule-section" id="risks" tabIndex={-1}>
      <h2>What may go wrong</h2>
      <NotHere kind="risk" ids={report.risks.map(({ id }) => id)} />
      {injuries.length > 0 ? (
        <>
          <h3>Where somebody could be hurt</h3>
          <p>These are not weighed in money. Prevent each of them, whatever its chance.</p>
          <ul class="list-plain findings">
            {injuries.map((risk) => (
              <Injury key={risk.id} risk={risk} />
            ))}
          </ul>
        </>
      ) : null}
      <h3>What costs money and hours, dearest on average first</h3>
      <p>
        {report.money.troubleBy === 'allowance'
          ? 'A flat share of the goods stands in the totals in place of the money of these risks, by your own choice on the buy list. Their hours count as they are.'
          : 'Their money and hours are in the totals, in the ways where they strike.'}
      </p>
      <FoldButton fold={fold} what={counted(others.length, 'risk')} />
      <table
        class={`table-stack risks foldable${fold.shutClass}`}
        {...asTable}
        aria-label="Risks by what they cost on average"
      >
        <ColumnHeads heads={HEADS} />
        <tbody>
          <Folded fold={fold}>
            {others.map((risk) => (
              <Later key={risk.id}>
                <Row risk={risk} />
              </Later>
            ))}
          </Folded>
        </tbody>
      </table>
    </section>
  );
}
