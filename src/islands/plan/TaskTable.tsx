import type { Progress } from '../../calc/core/progress.ts';
import type { PlannedTask, StagePlan } from '../../calc/evaluate.ts';
import { tasks } from '../../content/told/tasks.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { Later } from '../shared/in-turn.tsx';
import { ReadAbout } from '../shared/ReadAbout.tsx';
import { asCell, asColumnHead, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import { Blank, CannotUndo, TickBox } from './Glyphs.tsx';
import { StopWorkRow } from './StopWorkRow.tsx';
import { taskHours } from './words.ts';

type Numbers = ReadonlyMap<string, string>;

const STATE = { usable: '', cutting: 'This lathe cuts it.', out: 'Lathe out of use.' } as const;

const numbersOf = ({ after }: PlannedTask, numbers: Numbers): string =>
  after.flatMap((id) => numbers.get(id) ?? []).join(', ');

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
      {task.mains ? (
        <span class="task-note">
          Mains: local wiring rules first, and a licensed electrician where they ask for one.
        </span>
      ) : null}
      {task.note ? <span class="task-note">{task.note}</span> : null}
      {task.because.length > 0 ? (
        <span class="task-note">Hours are for this path: {task.because.join('; ')}.</span>
      ) : null}
    </>
  );
}

/** On paper what is needed and the test stand in the row; on screen they stand beside it. */
function OnPaper({ task, numbers }: { task: PlannedTask; numbers: Numbers }) {
  const first = numbersOf(task, numbers);
  return (
    <span class="print-only">
      <span class="task-note">
        <b>Needs:</b> {task.tools}
        {first ? `; after ${first}` : ''}. {STATE[task.lathe]}
      </span>
      <span class="task-note">
        <b>Right when:</b> {task.test} <Blank what={`measured for ${task.name}`} />
      </span>
    </span>
  );
}

interface RowProps {
  readonly task: PlannedTask;
  readonly numbers: Numbers;
  /** The day it was ticked. */
  readonly day: string | undefined;
}

function Row({ task, numbers, day }: RowProps) {
  const state = STATE[task.lathe];
  const first = numbersOf(task, numbers);
  return (
    <tr class="task" {...asRow} id={`task-${task.id}`}>
      <td {...asCell}>
        <TickBox done={day !== undefined} />
      </td>
      <th {...asRowHead}>
        <span class="task-number">{numbers.get(task.id)}</span> {task.name}
        {day === undefined ? null : <span class="task-note">Done on {day}.</span>}
        <About task={task} />
        <ReadAbout kind="tasks" told={tasks} id={task.id} room={task.subsystem} />
        <OnPaper task={task} numbers={numbers} />
      </th>
      <td {...asCell} data-label="Needs" class="task-needs">
        <span>
          {task.tools} {first ? <span class="task-after">after {first}</span> : null}{' '}
          {state ? <span class="task-state">{state}</span> : null}
        </span>
      </td>
      <td {...asCell} data-label="Hours" class="task-hours">
        <DimensionLine text={taskHours(task.hours)} length={104} />
      </td>
    </tr>
  );
}

interface Props {
  readonly stage: StagePlan;
  readonly numbers: Numbers;
  readonly done: Progress['done'];
  readonly stopWork: { readonly before: string; readonly say: string } | undefined;
}

/** Every task of a stage, with a box to tick on paper, and the note where mains work begins. */
export function TaskTable({ stage, numbers, done, stopWork }: Props) {
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
          <Later key={task.id}>
            {stopWork?.before === task.id ? <StopWorkRow say={stopWork.say} /> : null}
            <Row task={task} numbers={numbers} day={done[task.id]} />
          </Later>
        ))}
      </tbody>
    </table>
  );
}
