import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { SideBySide } from '../../../calc/choosing.ts';
import { abilityRows, CONVERSION } from '../../../calc/core/alternative.ts';
import type { Report } from '../../../calc/evaluate.ts';
import { alternativesBasis } from '../../../content/alternatives-basis.ts';
import { encodePath } from '../../../link/encode.ts';
import { to } from '../../shared/places.ts';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../../shared/table-roles.ts';
import { usePlanName } from '../../shared/use-plan-name.ts';
import {
  Able,
  Lacks,
  MEASURES,
  Measured,
  type MeasureId,
  PaybackCell,
  PerYear,
  RisksCell,
  SavedCell,
  SkillCell,
} from './Cells.tsx';
import { Choose } from './Choose.tsx';
import { ABILITY_NAMES, type Column, columnsOf, firstColumns, PHONE_COLUMNS } from './columns.ts';
import { InShort } from './InShort.tsx';
import { rowEnd } from './shared-scale.ts';
import { useNarrow } from './use-narrow.ts';

interface RowProps {
  readonly label: string;
  readonly note?: string;
  readonly columns: readonly Column[];
  readonly cell: (column: Column) => ComponentChildren;
}

function Row({ label, note, columns, cell }: RowProps) {
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

function GroupName({ name, span }: { name: string; span: number }) {
  return (
    <tr {...asRow} class="beside-group">
      <th {...asColumnHead} scope="colgroup" colSpan={span}>
        {name}
      </th>
    </tr>
  );
}

function MeasureRow({ id, columns }: { id: MeasureId; columns: readonly Column[] }) {
  const { label, shown, mark } = MEASURES[id];
  const end = rowEnd(columns.map((column) => column[id].twenty.map(shown)));
  return (
    <Row
      label={label}
      note={`One scale across the row, ${mark(0)} to ${mark(end)}`}
      columns={columns}
      cell={(column) => <Measured column={column} id={id} end={end} />}
    />
  );
}

function Head({ column }: { column: Column }) {
  return (
    <th {...asColumnHead}>
      <span class="beside-name">{column.name}</span>
      <span class="task-note">{column.means}</span>
      {column.first ? <span class="task-note">Looked at first, because {column.first}.</span> : null}
      {column.asPath ? (
        <a class="beside-link" href={`${to('plan/')}#${encodePath(column.asPath)}`}>
          Its plan on your lathe
        </a>
      ) : null}
      {column.id === CONVERSION ? (
        <a class="beside-link" href={to('plan/')} data-keep-path>
          The whole plan
        </a>
      ) : null}
    </th>
  );
}

interface TableProps {
  readonly columns: readonly Column[];
  readonly hobby: boolean;
  readonly named: boolean;
}

/** The same rows and the same space for every column: a conversion is one answer among others. */
function BesideTable({ columns, hobby, named }: TableProps) {
  const span = columns.length + 1;
  const back = { hobby, named };
  return (
    <table class={`beside beside-${columns.length}`} {...asTable} aria-label="Side by side">
      <thead>
        <tr {...asRow}>
          <td {...asCell} class="beside-corner">
            Same rows, same scales, the same 20 ways.
          </td>
          {columns.map((column) => (
            <Head key={column.id} column={column} />
          ))}
        </tr>
      </thead>
      <tbody class="group">
        <GroupName name="What it can do" span={span} />
        {abilityRows.map((row) => (
          <Row
            key={row}
            label={ABILITY_NAMES[row]}
            columns={columns}
            cell={(column) => <Able column={column} row={row} />}
          />
        ))}
        <Row
          label="What you still cannot do"
          columns={columns}
          cell={(column) => <Lacks column={column} />}
        />
      </tbody>
      <tbody class="group">
        <GroupName name="What it could cost" span={span} />
        <MeasureRow id="money" columns={columns} />
        <MeasureRow id="hours" columns={columns} />
        <MeasureRow id="weeksOut" columns={columns} />
        <Row label="A year of using it" columns={columns} cell={(column) => <PerYear column={column} />} />
      </tbody>
      <tbody class="group">
        <GroupName name="What could go wrong" span={span} />
        <Row
          label="Troubles"
          note="In how many of 20 ways"
          columns={columns}
          cell={(column) => <RisksCell column={column} />}
        />
        <Row label="Hardest skill" columns={columns} cell={(column) => <SkillCell column={column} />} />
      </tbody>
      <tbody class="group">
        <GroupName name="What it gives back" span={span} />
        <Row
          label="Hours saved a year"
          columns={columns}
          cell={(column) => <SavedCell column={column} {...back} />}
        />
        <Row
          label="Paid for itself after"
          note="At three values of an hour; the hours of building count"
          columns={columns}
          cell={(column) => <PaybackCell column={column} {...back} />}
        />
      </tbody>
    </table>
  );
}

interface Props {
  readonly report: Report;
  readonly side: SideBySide;
}

/** The conversion and everything else that may answer the same wish. */
export function Beside({ report, side }: Props) {
  const [chosen, setChosen] = useState<readonly string[]>();
  const narrow = useNarrow();
  const all = columnsOf(side, report, usePlanName(report));
  const wide = chosen ?? firstColumns(side.order);
  const usual = chosen ?? firstColumns(side.order, PHONE_COLUMNS);
  const shown = narrow ? usual.slice(0, PHONE_COLUMNS) : wide;
  const columns = shown.flatMap((id) => all.find((column) => column.id === id) ?? []);
  return (
    <section class="rule-section" id="beside" tabIndex={-1}>
      <h2>Side by side with everything else</h2>
      <p>
        A conversion is one answer to the wish. These are others, on your lathe and with your parts.{' '}
        <span class="quiet">{alternativesBasis}</span>
      </p>
      <Choose all={all} shown={shown} narrow={narrow} onShown={setChosen} />
      <BesideTable
        columns={columns}
        hobby={side.worth.hobby !== undefined}
        named={side.worth.saved !== undefined}
      />
      <InShort all={all} />
    </section>
  );
}
