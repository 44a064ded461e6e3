import { useStore } from '@nanostores/preact';
import { MEASURES, type MeasureId } from '../beside/measures.ts';
import { GroupName, Row } from '../beside/Rows.tsx';
import { rowEnd } from '../beside/shared-scale.ts';
import { $shown } from '../shared/currency.ts';
import { counted } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { asCell, asRow, asTable } from '../shared/table-roles.ts';
import { Cell } from './Cell.tsx';
import { Heads, type Shown } from './Heads.tsx';
import { ROW_NAMES, type RowId, type SortedGroup } from './rows.ts';

const isMeasure = (id: RowId): id is MeasureId => id in MEASURES;

interface RowOf {
  readonly id: RowId;
  readonly shown: readonly Shown[];
}

/** The right end of the row's scale and what is said of it. */
function scaleOf({ id, shown }: RowOf): { end: number; note: string | undefined } {
  if (!isMeasure(id)) return { end: 0, note: NOTES[id] };
  const { shown: inShown, mark } = MEASURES[id];
  const end = rowEnd(shown.map(({ column }) => column[id].twenty.map(inShown)));
  return { end, note: `One scale across the row, ${mark(0)} to ${mark(end)}` };
}

const NOTES: Readonly<Partial<Record<RowId, string>>> = {
  risks: 'The five that cost most, and in how many of 20 ways',
  checks: 'Whether the pieces fit each other',
};

function OneRow({ id, shown }: RowOf) {
  const { end, note } = scaleOf({ id, shown });
  const columns = shown.map((each) => ({ ...each, id: each.called.id }));
  return (
    <Row
      label={isMeasure(id) ? MEASURES[id].label : ROW_NAMES[id]}
      note={note}
      columns={columns}
      cell={({ called, column }) => (
        <>
          <span class="compare-here" aria-hidden="true">
            {called.letter}
          </span>
          <Cell id={id} column={column} name={`${called.letter}, ${called.name}`} end={end} />
        </>
      )}
    />
  );
}

interface GroupProps {
  readonly group: SortedGroup;
  readonly shown: readonly Shown[];
  readonly all: boolean;
}

function Group({ group: { name, differ, same }, shown, all }: GroupProps) {
  const rows = all ? [...differ, ...same] : differ;
  return (
    <tbody class="group">
      <GroupName name={name} span={shown.length + 1} />
      {rows.map((id) => (
        <OneRow key={id} id={id} shown={shown} />
      ))}
      {rows.length === 0 ? (
        <tr {...asRow}>
          <td {...asCell} colSpan={shown.length + 1} class="compare-none">
            Nothing differs here: {same.map((id) => ROW_NAMES[id].toLowerCase()).join(', ')}.
          </td>
        </tr>
      ) : null}
    </tbody>
  );
}

interface HiddenProps {
  readonly groups: readonly SortedGroup[];
  readonly all: boolean;
  readonly onAll: (all: boolean) => void;
}

/** How many rows say the same, and whether they are shown. */
export function SameRows({ groups, all, onAll }: HiddenProps) {
  const differ = groups.reduce((sum, group) => sum + group.differ.length, 0);
  const same = groups.reduce((sum, group) => sum + group.same.length, 0);
  return (
    <p class="compare-same">
      {counted(differ, 'row differs', 'rows differ')}.{' '}
      {same === 0 ? (
        'None is the same.'
      ) : (
        <>
          {counted(same, 'row is the same', 'rows are the same')}
          <span class="no-print">
            {all ? ', at the end of each group' : ''}:{' '}
            <button type="button" class="link-button" aria-expanded={all} onClick={() => onAll(!all)}>
              {all ? 'hide' : 'show'}
              <span class="visually-hidden"> the rows that are the same</span>
            </button>
          </span>
          <span class="print-only">{all ? ', at the end of each group.' : ' and not printed.'}</span>
        </>
      )}
    </p>
  );
}

interface Props {
  readonly shown: readonly Shown[];
  readonly groups: readonly SortedGroup[];
  readonly all: boolean;
  readonly editionsDiffer: boolean;
}

/** The same rows and the same space for every column. */
export function Table({ shown, groups, all, editionsDiffer }: Props) {
  useStore($shown);
  return (
    <table class={`beside compare-table beside-${shown.length}`} {...asTable} aria-label="Side by side">
      <Heads shown={shown} editionsDiffer={editionsDiffer} />
      {groups.map((group) => (
        <Later key={group.name}>
          <Group group={group} shown={shown} all={all} />
        </Later>
      ))}
    </table>
  );
}
