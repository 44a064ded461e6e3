import type { Calendar, CalendarTask } from '../../calc/working.ts';
import { dependenciesOf } from '../../export/dependencies.ts';
import { taskNumbers } from '../plan/numbers.ts';
import { ColumnHeads } from '../shared/ColumnHeads.tsx';
import { counted, weeks } from '../shared/format.ts';
import { asCell, asRow, asRowHead, asTable } from '../shared/table-roles.ts';
import type { PartProps } from './part.ts';
import { pictureOf } from './picture.ts';
import { StagePicture } from './StagePicture.tsx';
import { floatWords } from './words.ts';

const HEADS = ['Task', 'Waits for', 'May slip by'];

interface Naming {
  readonly nameOf: (id: string) => string;
  readonly before: ReadonlyMap<string, readonly string[]>;
}

function Row({ task, nameOf, before }: { task: CalendarTask } & Naming) {
  const firsts = before.get(task.id) ?? [];
  return (
    <tr {...asRow}>
      <th {...asRowHead}>
        {nameOf(task.id)}
        {task.done ? <span class="task-note">done</span> : null}
      </th>
      <td {...asCell} data-label="Waits for">
        {firsts.length === 0 ? (
          'nothing'
        ) : (
          <ul class="list-plain waits">
            {firsts.map((id) => (
              <li key={id}>{nameOf(id)}</li>
            ))}
          </ul>
        )}
      </td>
      <td {...asCell} data-label="May slip by">
        <span>{task.critical ? <b class="on-chain">longest chain</b> : floatWords(task.float)}</span>
      </td>
    </tr>
  );
}

function Stage({ name, tasks, ...naming }: { name: string; tasks: readonly CalendarTask[] } & Naming) {
  const onChain = tasks.filter(({ critical }) => critical).length;
  return (
    <details class="waits-stage">
      <summary>
        <b>{name}</b>: {counted(tasks.length, 'task')}
        {onChain > 0 ? `, ${onChain} on the longest chain` : ''}
      </summary>
      <div class="waits-both">
        <StagePicture picture={pictureOf(tasks, ({ id }) => naming.nameOf(id))} stage={name} />
        <table class="table-stack waits-table" {...asTable} aria-label={`What waits for what: ${name}`}>
          <ColumnHeads heads={HEADS} />
          <tbody>
            {tasks.map((task) => (
              <Row key={task.id} task={task} {...naming} />
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

/** What each task waits for; what follows from other lines is left out. */
function beforeOf(calendar: Calendar): Map<string, string[]> {
  const before = new Map<string, string[]>();
  for (const { from, to } of dependenciesOf(calendar).lines)
    before.set(to, [...(before.get(to) ?? []), from]);
  return before;
}

/** Tasks and what they wait for, stage by stage: a picture and the same as a table. */
export function WaitsFor({ report, calendar }: PartProps) {
  const numbers = taskNumbers(report.stages);
  const names = new Map(calendar.tasks.map(({ id, name }) => [id, name]));
  const nameOf = (id: string): string => `${numbers.get(id) ?? ''} ${names.get(id) ?? id}`.trim();
  const before = beforeOf(calendar);
  return (
    <section class="rule-section" id="waits" tabIndex={-1}>
      <h2>What waits for what</h2>
      <p>
        <span class="no-print">
          A line leads from a task down to what waits for it; what waits for another stage stands in the
          table.{' '}
        </span>
        A heavy line under a task: it is on the longest chain, so a week lost there is a week lost at the end.
        With helpers for everything else that chain takes {weeks(calendar.longestChain)}. The others may slip
        by so much before anybody has to wait. Numbers are those of the plan.
      </p>
      {calendar.stages.map(({ id, name }) => (
        <Stage
          key={id}
          name={name}
          tasks={calendar.tasks.filter(({ stage }) => stage === id)}
          nameOf={nameOf}
          before={before}
        />
      ))}
    </section>
  );
}
