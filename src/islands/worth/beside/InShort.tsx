import { CONVERSION } from '../../../calc/core/alternative.ts';
import { hoursRange, middleHalf, moneyRange, weeksRange } from '../../shared/format.ts';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../../shared/table-roles.ts';
import type { Column } from './columns.ts';

const half = ({ twenty }: Column['money'], say: (from: number, to: number) => string): string => {
  const { from, to } = middleHalf(twenty);
  return to < 0.05 ? 'none' : say(from, to);
};

function Row({ column }: { column: Column }) {
  return (
    <tr {...asRow}>
      <th {...asRowHead}>
        {column.name} <span class="task-note">{column.means}</span>
      </th>
      <td {...asCell} data-label="Money">
        {half(column.money, moneyRange)}
      </td>
      <td {...asCell} data-label="Hours">
        {half(column.hours, hoursRange)}
      </td>
      <td {...asCell} data-label="Without lathe">
        {half(column.weeksOut, weeksRange)}
      </td>
      <td {...asCell} data-label="Cannot do">
        {column.lacks.join(' ')}
      </td>
    </tr>
  );
}

/** Everything that may answer the wish, in the order in which we would look at it, a line each. */
export function InShort({ all }: { all: readonly Column[] }) {
  const others = all.filter(({ id }) => id !== CONVERSION).length;
  return (
    <>
      <h3 id="in-short">Your plan and all {others} others in short</h3>
      <p class="quiet small">
        In the order in which we would look at them on your path; half of the ways lie within each range.
      </p>
      <table class="table-stack in-short" {...asTable} aria-labelledby="in-short">
        <thead>
          <tr {...asRow}>
            {['What', 'Money once', 'Hours', 'Without the lathe', 'What you still cannot do'].map((head) => (
              <th key={head} {...asColumnHead}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {all.map((column) => (
            <Row key={column.id} column={column} />
          ))}
        </tbody>
      </table>
    </>
  );
}
