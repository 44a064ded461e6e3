import type { DeliveryRow } from '../../calc/working.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { counted, ofTwenty } from '../shared/format.ts';
import { buyLinePlace } from '../shared/places.ts';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import type { PartProps } from './part.ts';
import { momentWords } from './words.ts';

const HEADS = ['Part', 'Order by', 'From a slow seller', 'Needed', 'Work waits for it'];
/** Those to be ordered soonest stand open; the rest is folded. */
const FIRST = 12;

function Row({ row, task }: { row: DeliveryRow; task: string }) {
  const { part, name, orderBy, orderBySlow, needed, days, waitedForOfTwenty } = row;
  return (
    <tr {...asRow}>
      <th {...asRowHead}>
        <a href={buyLinePlace(part)} data-keep-path>
          {name}
        </a>
      </th>
      <td {...asCell} data-label="Order by">
        <b>{momentWords(orderBy, days?.orderBy)}</b>
      </td>
      <td {...asCell} data-label="Slow seller">
        {momentWords(orderBySlow, days?.orderBySlow)}
      </td>
      <td {...asCell} data-label="Needed">
        <span>
          {momentWords(needed.p50, days?.needed)}
          <span class="task-note">{task}</span>
        </span>
      </td>
      <td {...asCell} data-label="Work waits" class={waitedForOfTwenty === 0 ? 'is-blank' : undefined}>
        {waitedForOfTwenty === 0 ? 'no' : `in ${ofTwenty(waitedForOfTwenty)} ways`}
      </td>
    </tr>
  );
}

function Table({
  rows,
  nameOf,
  label,
}: {
  rows: readonly DeliveryRow[];
  nameOf: (id: string) => string;
  label: string;
}) {
  return (
    <table class="table-stack deliveries" {...asTable} aria-label={label}>
      <ColumnHeads heads={HEADS} />
      <tbody>
        {rows.map((row) => (
          <Row key={row.part} row={row} task={nameOf(row.neededBy)} />
        ))}
      </tbody>
    </table>
  );
}

/** Every part that has to come, in the order in which it must be ordered. */
export function Deliveries({ calendar: { deliveries, start, tasks } }: PartProps) {
  const names = new Map(tasks.map(({ id, name }) => [id, name]));
  const nameOf = (id: string): string => names.get(id) ?? id;
  const rest = deliveries.slice(FIRST);
  return (
    <section class="rule-section" id="deliveries" tabIndex={-1}>
      <h2>Deliveries</h2>
      {deliveries.length === 0 ? (
        <p>Nothing is on its way: every part of this plan is there.</p>
      ) : (
        <>
          <p>
            In the order in which they must be ordered, so that the first task that needs them typically need
            not wait.{' '}
            {start === undefined ? 'Weeks count from the start.' : 'Days follow from the first day above.'}
          </p>
          <Table rows={deliveries.slice(0, FIRST)} nameOf={nameOf} label="Deliveries, the first to order" />
          {rest.length > 0 ? (
            <details>
              <summary>{counted(rest.length, 'more delivery', 'more deliveries')}</summary>
              <Table rows={rest} nameOf={nameOf} label="Deliveries, the rest" />
            </details>
          ) : null}
        </>
      )}
    </section>
  );
}
