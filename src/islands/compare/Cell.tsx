import type { ComparedColumn } from '../../calc/comparing.ts';
import { Able, Lacks, Measured, RisksCell } from '../beside/Cells.tsx';
import { Scissors } from '../plan/Glyphs.tsx';
import { ResultMark } from '../shared/ResultMark.tsx';
import { lacksOf, type RowId, saySkill, sayYear } from './rows.ts';

interface Props {
  readonly id: RowId;
  readonly column: ComparedColumn;
  /** "A, your plan": whose it is, for a reader who hears it. */
  readonly name: string;
  /** The right end of the scale of a row of rods. */
  readonly end: number;
}

function Named({ those }: { those: readonly { readonly id: string; readonly label: string }[] }) {
  return <span class="task-note">{those.map(({ label }) => label).join('; ')}</span>;
}

function Checks({ checks }: Pick<ComparedColumn, 'checks'>) {
  if (!checks) return <>Nothing of it is ours to check.</>;
  const { ok, look, stop, open } = checks;
  return (
    <ul class="list-plain beside-risks">
      <li>
        <ResultMark result="ok" word={`${ok} ok`} />
      </li>
      {look.length > 0 ? (
        <li>
          <ResultMark result="look" word={`${look.length} to look at`} />
          <Named those={look} />
        </li>
      ) : null}
      {stop.length > 0 ? (
        <li>
          <ResultMark result="stop" word={`${stop.length} to stop at`} />
          <Named those={stop} />
        </li>
      ) : null}
      {open > 0 ? (
        <li>
          <ResultMark result="not-yet" word={`${open} not yet`} />
        </li>
      ) : null}
    </ul>
  );
}

function Said({ those, none }: { those: readonly string[]; none: string }) {
  if (those.length === 0) return <>{none}</>;
  return <Lacks lacks={those} />;
}

function Final({ final }: Pick<ComparedColumn, 'final'>) {
  if (final.length === 0) return <>None.</>;
  return (
    <ul class="list-plain beside-risks">
      {final.map(({ task, name }) => (
        <li key={task}>
          <span class="cannot-undo">
            <Scissors />
            {name}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** What one column says in one row. */
export function Cell({ id, column, name, end }: Props) {
  switch (id) {
    case 'money':
    case 'hours':
    case 'weeksOut':
      return <Measured name={name} spread={column[id]} id={id} end={end} />;
    case 'lacks':
      return <Lacks lacks={lacksOf(column)} />;
    case 'perYear':
      return <>{sayYear(column)}</>;
    case 'risks':
      return <RisksCell risks={column.risks} />;
    case 'checks':
      return <Checks checks={column.checks} />;
    case 'skill':
      return <>{saySkill(column)}</>;
    case 'stops':
      return (
        <Said
          those={column.stops.map(({ say }) => say)}
          none={column.kind === 'path' ? 'Nowhere before the end.' : 'It is not built in stages.'}
        />
      );
    case 'final':
      return <Final final={column.final} />;
    default:
      return <Able ability={column.abilities[id]} />;
  }
}
