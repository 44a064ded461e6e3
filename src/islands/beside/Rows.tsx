import type { ComponentChildren } from 'preact';
import type { Spread } from '../../calc/evaluate.ts';
import { asCell, asColumnHead, asRow, asRowHead } from '../shared/table-roles.ts';
import { Measured } from './Cells.tsx';
import { MEASURES, type MeasureId } from './measures.ts';
import { rowEnd } from './shared-scale.ts';

interface RowProps<Column> {
  readonly label: string;
  readonly note?: string | undefined;
  readonly columns: readonly Column[];
  readonly cell: (column: Column) => ComponentChildren;
}

/** One row of things side by side: its label, then a cell for each column. */
export function Row<Column extends { readonly id: string }>({
  label,
  note,
  columns,
  cell,
}: RowProps<Column>) {
  return (
    <tr {...asRow}>
      <th {...asRowHead}>
        {label}
        {note ? <span class="task-note">{note}</span> : null}
      </th>
      {columns.map((column) => (
        <td key={column.id} {...asCell}>
          {cell(column)}
        </td>
      ))}
    </tr>
  );
}

/** The head of a group of rows. */
export function GroupName({ name, span }: { name: string; span: number }) {
  return (
    <tr {...asRow} class="beside-group">
      <th {...asColumnHead} scope="colgroup" colSpan={span}>
        {name}
      </th>
    </tr>
  );
}

type MeasuredColumn = { readonly id: string; readonly name: string } & Readonly<Record<MeasureId, Spread>>;

/** Rods on one scale across the row. */
export function MeasureRow({ id, columns }: { id: MeasureId; columns: readonly MeasuredColumn[] }) {
  const { label, shown, mark } = MEASURES[id];
  const end = rowEnd(columns.map((column) => column[id].twenty.map(shown)));
  return (
    <Row
      label={label}
      note={`One scale across the row, ${mark(0)} to ${mark(end)}`}
      columns={columns}
      cell={(column) => <Measured name={column.name} spread={column[id]} id={id} end={end} />}
    />
  );
}
