import { useStore } from '@nanostores/preact';
import { type ShelfMark, shelfMarks } from '../../calc/core/progress.ts';
import type { ShelfLine } from '../../calc/working.ts';
import { FoldButton, Folded, useFold } from '../shared/Fold.tsx';
import { counted } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { TickBox } from './Glyphs.tsx';
import { $working, type Sheet } from './job.ts';
import { taskNumbers, tasksById, wantedAt } from './numbers.ts';

const HEADS: Readonly<Record<ShelfMark, string>> = {
  drawing: 'Drawing',
  made: 'Made',
  measured: 'Measured',
  spare: 'Spare',
  photo: 'Photo',
};

function Mark({ line, mark }: { line: ShelfLine; mark: ShelfMark }) {
  const [asked, done] = [line.asks.includes(mark), line.ticked.includes(mark)];
  return (
    <td {...asCell} data-label={HEADS[mark]} class="shelf-mark">
      {asked ? <TickBox done={done} /> : <span aria-hidden="true">–</span>}
      <span class="visually-hidden">{asked ? (done ? 'done' : 'open') : 'not asked'}</span>
    </td>
  );
}

interface RowProps {
  readonly line: ShelfLine;
  readonly number: string | undefined;
  readonly wanted: string;
  /** Said once for each task. */
  readonly test: string | undefined;
}

function Row({ line, number, wanted, test }: RowProps) {
  return (
    <tr {...asRow}>
      <th {...asRowHead}>
        <span class="task-number">{number}</span> {line.what}
        {line.bought ? <span class="task-note">Comes finished: measure it and keep it.</span> : null}
        {test ? (
          <span class="task-note">
            <b>Right when:</b> {test}
          </span>
        ) : null}
      </th>
      <td {...asCell} data-label="Wanted at">
        {wanted}
      </td>
      {shelfMarks.map((mark) => (
        <Mark key={mark} line={line} mark={mark} />
      ))}
    </tr>
  );
}

function Table({ report, lines }: { report: Sheet['report']; lines: readonly ShelfLine[] }) {
  const fold = useFold();
  const [numbers, tasks] = [taskNumbers(report.stages), tasksById(report.stages)];
  return (
    <>
      <FoldButton fold={fold} what={counted(lines.length, 'part')} />
      <table class={`table-stack foldable${fold.shutClass}`} {...asTable} aria-label="Make-first list">
        <thead>
          <tr {...asRow}>
            {['Part', 'Wanted at', ...shelfMarks.map((mark) => HEADS[mark])].map((head) => (
              <th key={head} {...asColumnHead}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <Folded fold={fold}>
            {lines.map((line, at) => {
              const stage = wantedAt(report, line.task);
              const isFirst = lines[at - 1]?.task !== line.task;
              return (
                <Later key={line.id}>
                  <Row
                    line={line}
                    number={numbers.get(line.task)}
                    wanted={stage ? `stage ${stage.number}` : 'the hold point'}
                    test={isFirst ? tasks.get(line.task)?.test : undefined}
                  />
                </Later>
              );
            })}
          </Folded>
        </tbody>
      </table>
    </>
  );
}

const GATE =
  'This list is a gate. What this lathe must cut has to lie on the shelf before it is taken apart: what is forgotten here cannot be made any more.';
const NO_GATE = 'No gate here: your other lathe can still make what is forgotten. The list saves the walk.';

/** Everything that must lie on the shelf before the lathe is taken apart: the list to hang beside it. */
export function MakeFirst({ report }: Sheet) {
  const shelf = useStore($working)?.shelf;
  if (shelf?.lines.length === 0) return null;
  return (
    <section class="make-first" id="make-first" tabIndex={-1}>
      <h2>Make-first list</h2>
      {shelf ? (
        <>
          <p>
            <b>{shelf.isGate ? GATE : NO_GATE}</b>
          </p>
          <Table report={report} lines={shelf.lines} />
        </>
      ) : (
        <p class="awaited" role="status">
          Working out what has to be made first …
        </p>
      )}
    </section>
  );
}
