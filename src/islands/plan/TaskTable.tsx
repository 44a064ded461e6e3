import type { PlannedTask, StagePlan } from '../../calc/evaluate.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { CannotUndo, TickBox } from './Glyphs.tsx';
import { taskHours } from './words.ts';

type Numbers = ReadonlyMap<string, string>;

const STATE = { usable: '', cutting: 'This lathe cuts it.', out: 'Lathe out of use.' } as const;

function After({ after, numbers }: { after: readonly string[]; numbers: Numbers }) {
  const known = after.flatMap((id) => numbers.get(id) ?? []);
  return known.length === 0 ? null : <span class="task-after">after {known.join(', ')}</span>;
}

function About({ task }: { task: PlannedTask }) {
  return (
    <>
      {task.undo === 'cannot-be-undone' ? <CannotUndo /> : null}
      {task.undo === 'partly' ? <span class="task-note">Only partly undone afterwards.</span> : null}
      {task.safety ? (
        <span class="caution">
          <b>Safety:</b> {task.safety}
        </span>
      ) : null}
      {task.note ? <span class="task-note">{task.note}</span> : null}
      {task.because.length > 0 ? (
        <span class="task-note">Hours are for this path: {task.because.join('; ')}.</span>
      ) : null}
    </>
  );
}

function Row({ task, numbers }: { task: PlannedTask; numbers: Numbers }) {
  const state = STATE[task.lathe];
  return (
    <tr class="task" {...asRow} id={`task-${task.id}`}>
      <td {...asCell}>
        <TickBox />
      </td>
      <th {...asRowHead}>
        <span class="task-number">{numbers.get(task.id)}</span> {task.name}
        <About task={task} />
      </th>
      <td {...asCell} data-label="Needs" class="task-needs">
        <span>
          {task.tools} <After after={task.after} numbers={numbers} />{' '}
          {state ? <span class="task-state">{state}</span> : null}
        </span>
      </td>
      <td {...asCell} data-label="Hours" class="task-hours">
        <DimensionLine text={taskHours(task.hours)} length={104} />
      </td>
    </tr>
  );
}

/** Every task of a stage, with a box to tick on paper. */
export function TaskTable({ stage, numbers }: { stage: StagePlan; numbers: Numbers }) {
  return (
    <table class="task-table table-stack" {...asTable} aria-label={`Tasks of stage ${stage.number}`}>
      <thead>
        <tr {...asRow}>
          <th {...asColumnHead}>
            <span class="visually-hidden">Done</span>
          </th>
          <th {...asColumnHead}>Task</th>
          <th {...asColumnHead}>Needs, and what comes first</th>
          <th {...asColumnHead}>Hours, quick to slow</th>
        </tr>
      </thead>
      <tbody>
        {stage.tasks.map((task) => (
          <Row key={task.id} task={task} numbers={numbers} />
        ))}
      </tbody>
    </table>
  );
}
