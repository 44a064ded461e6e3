import type { Band } from '../../calc/core/band.ts';
import type { BillLine, Report } from '../../calc/evaluate.ts';
import { rooms } from '../../calc/guide.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { FoldButton, Folded, useFold } from '../shared/Fold.tsx';
import { counted } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { isAskedFor, to } from '../shared/places.ts';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { BillRow } from './BillRow.tsx';
import { priceRange } from './words.ts';

const HEADS = ['Part, and why it is there', 'Quantity', 'Each', 'Line', 'Days to arrive', 'On arrival'];

function Group({ name, lines }: { name: string; lines: readonly BillLine[] }) {
  const ids = lines.map(({ part }) => part);
  const fold = useFold(isAskedFor('part', ids));
  if (lines.length === 0) return null;
  return (
    <tbody class={`group foldable${fold.shutClass}`}>
      <tr {...asRow}>
        <th {...asRowHead} colSpan={6} class="group-name">
          {name} <FoldButton fold={fold} what={counted(lines.length, 'line')} />
        </th>
      </tr>
      <Folded fold={fold}>
        {lines.map((line) => (
          <Later key={line.part}>
            <BillRow line={line} />
          </Later>
        ))}
      </Folded>
    </tbody>
  );
}

function Total({ band }: { band: Band }) {
  return (
    <tbody class="group">
      <tr {...asRow} class="total">
        <th {...asRowHead} colSpan={3}>
          All lines added up, before freight, tax and duty{' '}
          <span class="quiet small">
            The sum of every low and the sum of every high: no purchase comes out that way. The rod at the top
            says what is plausible.
          </span>
        </th>
        <td {...asCell} colSpan={3}>
          {priceRange(band)}
        </td>
      </tr>
    </tbody>
  );
}

/** Everything to buy, by room: how many, the band of one and of the line, why, and what to inspect. */
export function Bill({ report }: { report: Report }) {
  const lines = [...report.bill.once, ...report.bill.perYear];
  const owned = lines.filter((line) => line.owned).length;
  return (
    <section class="rule-section" id="parts" tabIndex={-1}>
      <h2>Parts list</h2>
      <p>
        {counted(lines.length, 'line')}, low to high for each.{' '}
        {owned > 0 ? `${counted(owned, 'line')} struck out: you have it.` : ''} Inspect on arrival, while it
        can still go back.{' '}
        <a class="no-print" href={to('buy-list/')} data-keep-path>
          Prices of your own, orders and shops: the buy list
        </a>
      </p>
      <table class="bill table-stack" {...asTable} aria-label="Parts list">
        <ColumnHeads heads={HEADS} />
        {rooms.map(({ id, name }) => (
          <Group key={id} name={name} lines={lines.filter((line) => line.subsystem === id)} />
        ))}
        <Total band={report.money.parts.goods} />
      </table>
    </section>
  );
}
