import { useState } from 'preact/hooks';
import type { PlannedTask, StagePlan } from '../../calc/evaluate.ts';
import type { TaskStand, Working } from '../../calc/working.ts';
import { isAskedFor } from '../shared/places.ts';
import { type Names, TaskCard, TaskTick } from './TaskCard.tsx';

interface Props {
  readonly stage: StagePlan;
  readonly working: Working;
  readonly names: Names;
}

const WORDS: Readonly<Record<TaskStand['standing'], string>> = {
  done: '',
  next: 'next',
  ready: 'can be done now',
  blocked: 'something comes first',
};

function Row({
  task,
  stand,
  working,
  names,
}: Omit<Props, 'stage'> & { task: PlannedTask; stand: TaskStand }) {
  const [open, setOpen] = useState(isAskedFor('task', [task.id]));
  return (
    <li class={`bench-task is-${stand.standing}`} id={`task-${task.id}`} tabIndex={-1}>
      <div class="bench-row">
        <TaskTick task={task}>{task.name}</TaskTick>
        <span class="small quiet bench-stand">{WORDS[stand.standing]}</span>
        <button type="button" class="link-button" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? 'Less' : 'More'}
          <span class="visually-hidden">: {task.name}</span>
        </button>
      </div>
      {open ? <TaskCard task={task} stand={stand} readings={working.readings} names={names} /> : null}
    </li>
  );
}

/** The tasks of one stage, in the order in which one person works them. */
export function StagePart({ stage, working, names }: Props) {
  const stands = new Map(working.tasks.map((stand) => [stand.id, stand]));
  const order = working.tasks.map(({ id }) => id);
  const tasks = stage.tasks.toSorted((a, b) => order.indexOf(a.id) - order.indexOf(b.id));
  const hold = working.holds.find(({ id }) => id === stage.hold?.id);
  return (
    <>
      <ul class="list-plain">
        {tasks.map((task) => {
          const stand = stands.get(task.id);
          return stand ? (
            <Row key={task.id} task={task} stand={stand} working={working} names={names} />
          ) : null;
        })}
      </ul>
      {hold ? (
        <div class="bench-hold">
          <h3>{hold.name}</h3>
          <p>{hold.say}</p>
          <p>
            <b>
              {hold.passed
                ? 'Everything it waits for is ticked.'
                : `${hold.open.length} of ${hold.tasks.length} tasks that it waits for are open.`}
            </b>
          </p>
        </div>
      ) : null}
      {stage.stop ? <p class="bench-stop">You may stop here and have {stage.stop.say}</p> : null}
    </>
  );
}
