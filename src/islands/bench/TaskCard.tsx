import { useStore } from '@nanostores/preact';
import { useId, useState } from 'preact/hooks';
import { nothingDone } from '../../calc/core/progress.ts';
import type { PlannedTask } from '../../calc/evaluate.ts';
import type { MeasuredReading, TaskStand } from '../../calc/working.ts';
import { tasks } from '../../content/told/tasks.ts';
import { today } from '../buy/day.ts';
import { parseFigure } from '../lathe/parse.ts';
import { CannotUndo } from '../plan/Glyphs.tsx';
import { taskHours } from '../plan/words.ts';
import { setNote, setSpent, tick } from '../progress.ts';
import { plain } from '../shared/format.ts';
import { NotKept } from '../shared/NotKept.tsx';
import { ReadAbout } from '../shared/ReadAbout.tsx';
import { useFieldText } from '../shared/use-field-text.ts';
import { $path } from '../stores.ts';
import { ReadingField } from './ReadingField.tsx';

export interface Names {
  readonly task: (id: string) => string | undefined;
  readonly part: (id: string) => string | undefined;
  readonly shelf: (id: string) => string | undefined;
}

interface Props {
  readonly task: PlannedTask;
  readonly stand: TaskStand;
  readonly readings: readonly MeasuredReading[];
  readonly names: Names;
}

function Spent({ task }: { task: PlannedTask }) {
  const known = useStore($path).progress?.spent[task.id];
  const [typed, setTyped] = useFieldText(known === undefined ? '' : plain(known, 2));
  const [fault, setFault] = useState('');
  const take = (text: string) => {
    const read = parseFigure(text, 'hours', 'metric');
    setFault(read.kind === 'unreadable' ? read.say : '');
    if (read.kind === 'empty') setSpent(task.id, undefined);
    if (read.kind === 'value') setSpent(task.id, read.value);
  };
  const id = useId();
  return (
    <div class="field">
      <label for={id}>Hours spent so far</label>
      <span class="field-cells">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={fault ? 'true' : undefined}
          aria-describedby={`${id}-hint`}
          onInput={(event) => setTyped(event.currentTarget.value)}
          onChange={(event) => take(event.currentTarget.value)}
        />
        <span class="field-unit">h</span>
      </span>
      <p class={fault ? 'field-message stop' : 'field-hint'} id={`${id}-hint`} role="status">
        {fault ? <NotKept say={fault} /> : `The plan says ${taskHours(task.hours)}, quick to slow.`}
      </p>
    </div>
  );
}

function Note({ task }: { task: PlannedTask }) {
  const note = useStore($path).progress?.notes[task.id] ?? '';
  const id = useId();
  return (
    <div class="field">
      <label for={id}>Note</label>
      <textarea
        id={id}
        rows={2}
        maxLength={2000}
        value={note}
        onChange={(event) => setNote(task.id, event.currentTarget.value)}
      />
    </div>
  );
}

/** What keeps a task waiting, each thing by its name. */
export function waitingWords({ tasks, parts, shelf }: TaskStand, names: Names): string[] {
  const said = (ids: readonly string[], name: (id: string) => string | undefined) =>
    ids.map((id) => name(id) ?? id);
  return [
    ...said(tasks, names.task),
    ...said(parts, names.part).map((name) => `${name} has not come`),
    ...said(shelf, names.shelf).map((name) => `${name}: not all ticked on the make-first list`),
  ];
}

function Waits({ stand, names }: { stand: TaskStand; names: Names }) {
  const words = waitingWords(stand, names);
  if (words.length === 0) return null;
  return (
    <div class="task-waits">
      <p>
        <b>First:</b>
      </p>
      <ul>
        {words.map((word) => (
          <li key={word}>{word}</li>
        ))}
      </ul>
    </div>
  );
}

/** The tick of a task: the day it was done goes with it. */
export function TaskTick({ task, children }: { task: PlannedTask; children: preact.ComponentChildren }) {
  const done = (useStore($path).progress ?? nothingDone).done[task.id];
  return (
    <label class="choice task-tick">
      <input
        type="checkbox"
        checked={done !== undefined}
        onChange={(event) => tick(task.id, event.currentTarget.checked ? today() : undefined)}
      />
      <span>
        {children}
        {done ? <span class="quiet small"> done {done}</span> : null}
      </span>
    </label>
  );
}

/** Everything about one task at the bench: what it needs, its caution, its proof with blanks, hours and a note. */
export function TaskCard({ task, stand, readings, names }: Props) {
  const mine = readings.filter((reading) => reading.task === task.id);
  return (
    <section class="task-card" aria-label={task.name}>
      {task.safety ? (
        <p class="caution">
          <b>Safety:</b> {task.safety}
        </p>
      ) : null}
      {task.undo === 'cannot-be-undone' ? <CannotUndo /> : null}
      <Waits stand={stand} names={names} />
      <p>
        <b>Needs:</b> {task.tools}
      </p>
      {task.note ? <p class="small">{task.note}</p> : null}
      <p>
        <b>Done when:</b> {task.test}
        <ReadAbout kind="tasks" told={tasks} id={task.id} room={task.subsystem} />
      </p>
      {mine.map((reading) => (
        <ReadingField key={reading.id} reading={reading} nameOf={names.task} />
      ))}
      <div class="field-pairs">
        <Spent task={task} />
        <Note task={task} />
      </div>
    </section>
  );
}
