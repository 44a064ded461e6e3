import type { PlannedTask, Report } from '../../calc/evaluate.ts';
import { counted } from '../shared/format.ts';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { FoldButton, useFold } from './Fold.tsx';
import { Blank, TickBox } from './Glyphs.tsx';
import { keepsAnother, wantedAt } from './numbers.ts';

interface Props {
  readonly report: Report;
  readonly numbers: ReadonlyMap<string, string>;
}

function Box({ label }: { label: string }) {
  return (
    <td {...asCell} data-label={label}>
      <TickBox />
    </td>
  );
}

function Row({ task, number, wanted }: { task: PlannedTask; number: string | undefined; wanted: string }) {
  return (
    <tr {...asRow}>
      <th {...asRowHead}>
        <span class="task-number">{number}</span> {task.name}
      </th>
      <td {...asCell} data-label="Wanted at">
        {wanted}
      </td>
      <Box label="Drawing" />
      <Box label="Made" />
      <td {...asCell} data-label="Measured">
        <Blank what={`measured for ${task.name}`} />
      </td>
      <td {...asCell} data-label="Limit" class="small">
        {task.test}
      </td>
      <Box label="Spare" />
    </tr>
  );
}

const HEADS = ['Part', 'Wanted at', 'Drawing', 'Made', 'Measured', 'Limit', 'Spare'];

/** Everything that this lathe must cut before it is taken apart: the list to hang beside it. */
export function MakeFirst({ report, numbers }: Props) {
  const tasks = report.stages.flatMap((stage) => stage.tasks.filter(({ lathe }) => lathe === 'cutting'));
  const fold = useFold();
  if (tasks.length === 0) return null;
  return (
    <section class="make-first" id="make-first" tabIndex={-1}>
      <h2>Make-first list</h2>
      <p>
        {keepsAnother(report)
          ? 'Parts to be turned. Your other lathe can still cut what is forgotten.'
          : 'Parts that this lathe must cut while it still can. What is forgotten here cannot be made once it is apart.'}
      </p>
      <FoldButton fold={fold} what={counted(tasks.length, 'part')} />
      <table class={`table-stack foldable${fold.shutClass}`} {...asTable} aria-label="Make-first list">
        <thead>
          <tr {...asRow}>
            {HEADS.map((head) => (
              <th key={head} {...asColumnHead}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {tasks.map((task) => {
            const stage = wantedAt(report, task.id);
            return (
              <Row
                key={task.id}
                task={task}
                number={numbers.get(task.id)}
                wanted={stage ? `stage ${stage.number}` : 'the hold point'}
              />
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
