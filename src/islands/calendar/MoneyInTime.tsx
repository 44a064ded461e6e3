import type { Band } from '../../calc/core/band.ts';
import type { Calendar, MonthRow, StageRow } from '../../calc/working.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { counted, exactText, middleHalf, money, moneyRange } from '../shared/format.ts';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import type { PartProps } from './part.ts';
import { Within } from './Within.tsx';
import { inMoney, MOST } from './words.ts';

const STAGE_HEADS = [
  'Stage',
  'Half of the ways, everything in',
  'Lines, low',
  'Lines, likely',
  'Lines, high',
];
const FIRST_MONTHS = 6;
const LINE_LABELS = ['Lines, low', 'likely', 'high'];
const MONTH_HEADS = ['Month', 'On average', `So far, ${MOST}`];

function Half({ twenty }: StageRow['money']) {
  const { from, to } = middleHalf(twenty);
  return to === 0 && from === 0 ? <>nothing</> : <DimensionLine text={moneyRange(from, to)} length={118} />;
}

/** Low, likely and high to the cent, so that a column can be added up by hand. */
const Lines = ({ lines }: { lines: Band }) => (
  <>
    {lines.map((dollars, at) => (
      <td key={at} {...asCell} data-label={LINE_LABELS[at]} class="number">
        {exactText(dollars.toFixed(2))}
      </td>
    ))}
  </>
);

function Head({ heads }: { heads: readonly string[] }) {
  return (
    <thead>
      <tr {...asRow}>
        {heads.map((head) => (
          <th key={head} {...asColumnHead} class={/^Lines|average/.test(head) ? 'number' : undefined}>
            {head}
          </th>
        ))}
      </tr>
    </thead>
  );
}

function ByStage({ report, calendar }: PartProps) {
  return (
    <table class="table-stack money-stages" {...asTable} aria-label="Money by stage">
      <Head heads={STAGE_HEADS} />
      <tbody>
        {calendar.stages.map(({ id, name, money: spread, lines }) => (
          <tr key={id} {...asRow}>
            <th {...asRowHead}>{name}</th>
            <td {...asCell} data-label="Half of the ways">
              <Half {...spread} />
            </td>
            <Lines lines={lines} />
          </tr>
        ))}
        <tr {...asRow} class="total">
          <th {...asRowHead}>All stages</th>
          <td {...asCell} data-label="Half of the ways">
            <Half {...report.money} />
          </td>
          <Lines lines={calendar.lines} />
        </tr>
      </tbody>
    </table>
  );
}

function Month({ month }: { month: MonthRow }) {
  return (
    <tr {...asRow}>
      <th {...asRowHead}>Month {month.number}</th>
      <td {...asCell} data-label="On average" class="number">
        {money(month.mean)}
      </td>
      <td {...asCell} data-label="So far">
        <Within range={month.soFar} measure={inMoney} />
      </td>
    </tr>
  );
}

function Months({ months, label }: { months: readonly MonthRow[]; label: string }) {
  return (
    <table class="table-stack money-months" {...asTable} aria-label={label}>
      <Head heads={MONTH_HEADS} />
      <tbody>
        {months.map((month) => (
          <Month key={month.number} month={month} />
        ))}
      </tbody>
    </table>
  );
}

/** Most is paid in the first months; the rest is folded. */
function ByMonth({ months }: Pick<Calendar, 'months'>) {
  const rest = months.slice(FIRST_MONTHS);
  return (
    <>
      <Months months={months.slice(0, FIRST_MONTHS)} label="Money by month" />
      {rest.length > 0 ? (
        <details>
          <summary>{counted(rest.length, 'more month')}</summary>
          <Months months={rest} label="Money by month, the rest" />
        </details>
      ) : null}
    </>
  );
}

/** When the money goes: by the stage that needs it, and by the month in which it is paid. */
export function MoneyInTime({ report, calendar }: PartProps) {
  return (
    <section class="rule-section" id="money" tabIndex={-1}>
      <h2>Money by stage and by month</h2>
      <p>
        A part counts in the stage that needs it first. Everything in: with freight, tax, duty and trouble;
        ranges do not add up, because stages are not dear all at once. Lines are the prices of the parts list
        before freight, in dollars: each column adds up to the cent.
      </p>
      <ByStage report={report} calendar={calendar} />
      <h3>By month</h3>
      <p>
        Parts are paid with the order, trouble when its stage ends; months of 30 days and a half count from
        the start. The averages add up to the average of the whole.
      </p>
      <ByMonth months={calendar.months} />
    </section>
  );
}
