import { useState } from 'preact/hooks';
import type { SideBySide } from '../../../calc/choosing.ts';
import { abilityRows, CONVERSION } from '../../../calc/core/alternative.ts';
import type { Path } from '../../../calc/core/path.ts';
import type { Report } from '../../../calc/evaluate.ts';
import { alternativesBasis } from '../../../content/alternatives-basis.ts';
import { encodeComparison } from '../../../link/comparison.ts';
import { encodePath } from '../../../link/encode.ts';
import { Able, Lacks, RisksCell, SkillCell } from '../../beside/Cells.tsx';
import { GroupName, MeasureRow, Row } from '../../beside/Rows.tsx';
import { useNarrow } from '../../beside/use-narrow.ts';
import { ABILITY_NAMES, MOST_COLUMNS, PHONE_COLUMNS } from '../../beside/words.ts';
import { to } from '../../shared/places.ts';
import { asCell, asColumnHead, asRow, asTable } from '../../shared/table-roles.ts';
import { usePlanName } from '../../shared/use-plan-name.ts';
import { PaybackCell, PerYear, SavedCell } from './Cells.tsx';
import { Choose } from './Choose.tsx';
import { type Column, columnsOf, firstColumns } from './columns.ts';
import { InShort } from './InShort.tsx';

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
            cell={(column) => <Able ability={column.abilities[row]} />}
          />
        ))}
        <Row
          label="What you still cannot do"
          columns={columns}
          cell={(column) => <Lacks lacks={column.lacks} />}
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
          cell={(column) => <RisksCell risks={column.risks} />}
        />
        <Row label="Hardest skill" columns={columns} cell={(column) => <SkillCell skill={column.skill} />} />
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

/** The open path beside the first alternatives that are shown here, as a comparison. */
const comparing = (path: Path, shown: readonly string[]): string => {
  const others = shown.filter((id) => id !== CONVERSION).slice(0, MOST_COLUMNS - 1);
  const columns = others.map((id) => ({ kind: 'alternative', id }) as const);
  return `${to('compare/')}#${encodeComparison(path, columns)}`;
};

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
      <p class="no-print">
        <a href={comparing(report.path, shown)}>Weigh these against other ways of converting</a>
      </p>
      <BesideTable
        columns={columns}
        hobby={side.worth.hobby !== undefined}
        named={side.worth.saved !== undefined}
      />
      <InShort all={all} />
    </section>
  );
}
