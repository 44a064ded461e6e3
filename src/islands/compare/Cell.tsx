import type { ComparedColumn } from '../../calc/comparing.ts';
import { checks } from '../../content/told/checks.ts';
import { Able, Lacks, Measured, RisksCell } from '../beside/Cells.tsx';
import { Scissors } from '../plan/Glyphs.tsx';
import { InTheBook } from '../shared/ReadAbout.tsx';
import { ResultMark } from '../shared/ResultMark.tsx';
import { lacksOf, type RowId, saySkill, sayYear, stopsOf } from './rows.ts';

interface Props {
  readonly id: RowId;
  readonly column: ComparedColumn;
  /** "A, your plan": whose it is, for a reader who hears it. */
  readonly name: string;
  /** The right end of the scale of a row of rods. */
  readonly end: number;
}

type Check = NonNullable<ComparedColumn['checks']>['stop'][number];

/** A count of checks that are not ok, and which they are: stops at once, the others a press away. */
function NotOk({ result, those }: { result: 'look' | 'stop'; those: readonly Check[] }) {
  if (those.length === 0) return null;
  const labels = (
    <span class="task-note">
      {those.map(({ id, label, subsystem }, at) => (
        <span key={id}>
          {at > 0 ? '; ' : ''}
          <InTheBook kind="checks" told={checks} id={id} room={subsystem}>
            {label}
          </InTheBook>
        </span>
      ))}
    </span>
  );
  const mark = <ResultMark result={result} word={`${those.length} ${result}`} />;
  if (result === 'stop')
    return (
      <li>
        {mark}
        {labels}
      </li>
    );
  return (
    <li>
      <details>
        <summary>{mark}</summary>
        {labels}
      </details>
    </li>
  );
}

function Checks({ said }: { said: ComparedColumn['checks'] }) {
  if (!said) return <>Nothing of it is ours to check.</>;
  const { ok, look, stop, open } = said;
  return (
    <ul class="list-plain beside-risks">
      <NotOk result="stop" those={stop} />
      <NotOk result="look" those={look} />
      <li>
        <ResultMark result="ok" word={`${ok} ok`} />
      </li>
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
      return <Checks said={column.checks} />;
    case 'skill':
      return <>{saySkill(column)}</>;
    case 'stops':
      return (
        <Said
          those={stopsOf(column)}
          none={column.kind === 'path' ? 'Nowhere before the end.' : 'It is not built in stages.'}
        />
      );
    case 'final':
      return <Final final={column.final} />;
    default:
      return <Able ability={column.abilities[id]} />;
  }
}
