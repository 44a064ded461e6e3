import { useStore } from '@nanostores/preact';
import type { PlannedTask } from '../../calc/evaluate.ts';
import type { MeasuredReading } from '../../calc/working.ts';
import { $units } from '../preferences.ts';
import { FoldButton, Folded, useFold } from '../shared/Fold.tsx';
import { counted } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { asCell, asRow, asRowHead } from '../shared/table-roles.ts';
import { Ticked } from './Glyphs.tsx';
import { $working, type Sheet } from './job.ts';
import { type Names, ReadingRow, ReadingTable } from './ReadingTable.tsx';
import { namesOf } from './reading-names.ts';

interface GroupProps {
  readonly task: PlannedTask;
  readonly readings: readonly MeasuredReading[];
  readonly names: Names;
  readonly done: boolean;
}

/** One task of the order of work with what is measured in it, or its test where no figure is asked for. */
function TaskGroup({ task, readings, names, done }: GroupProps) {
  const units = useStore($units);
  return (
    <tbody class="group">
      <tr {...asRow}>
        <th {...asRowHead} colSpan={3} class="reading-task">
          <Ticked done={done}>
            <span class="task-number">{names.number(task.id)}</span> {task.name}
          </Ticked>
        </th>
      </tr>
      {readings.map((reading) => (
        <ReadingRow key={reading.id} reading={reading} names={names} units={units} />
      ))}
      {readings.length === 0 ? (
        <tr {...asRow}>
          <td {...asCell} colSpan={3}>
            {task.test}
          </td>
        </tr>
      ) : null}
    </tbody>
  );
}

function OnTheWay({ report, readings, names }: Pick<Sheet, 'report'> & ListProps) {
  const done = report.path.progress?.done ?? {};
  const asked = (task: PlannedTask): MeasuredReading[] => readings.filter((each) => each.task === task.id);
  const tasks = report.stages
    .flatMap((stage) => stage.tasks)
    .filter((task) => task.stage === 'commission' || asked(task).length > 0);
  const fold = useFold();
  return (
    <>
      <h3>On the way and in commissioning, in the order of work</h3>
      <FoldButton fold={fold} what={counted(readings.length, 'reading')} />
      <ReadingTable label="Readings in the order of work" shutClass={fold.shutClass}>
        <Folded fold={fold}>
          {tasks.map((task) => (
            <Later key={task.id}>
              <TaskGroup task={task} readings={asked(task)} names={names} done={task.id in done} />
            </Later>
          ))}
        </Folded>
      </ReadingTable>
    </>
  );
}

interface ListProps {
  readonly readings: readonly MeasuredReading[];
  readonly names: Names;
}

function List({ title, readings, names }: { title: string } & ListProps) {
  const units = useStore($units);
  const fold = useFold();
  if (readings.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <FoldButton fold={fold} what={counted(readings.length, 'reading')} />
      <ReadingTable label={title} shutClass={fold.shutClass}>
        <tbody>
          <Folded fold={fold}>
            {readings.map((reading) => (
              <ReadingRow key={reading.id} reading={reading} names={names} units={units} />
            ))}
          </Folded>
        </tbody>
      </ReadingTable>
    </>
  );
}

/** Everything that is measured, with a blank for each value and the limit beside it; what is written down stands in it. */
export function Measure({ report }: Sheet) {
  const readings = useStore($working)?.readings;
  const names = namesOf(report);
  return (
    <section class="rule-section measure" id="proof" tabIndex={-1}>
      <h2>Measure and prove</h2>
      <p>
        A blank for each value, its limit beside it. Limits are common practice, no source, unless the task
        says more. A value outside its limit names where to look.
      </p>
      {readings ? (
        <>
          <List
            title="List A: the lathe as it is, before anything is bought"
            readings={readings.filter(({ list }) => list === 'survey')}
            names={names}
          />
          <OnTheWay report={report} readings={readings.filter(({ list }) => !list)} names={names} />
          <List
            title="List B: proof of the finished machine"
            readings={readings.filter(({ list }) => list === 'proof')}
            names={names}
          />
        </>
      ) : (
        <p class="awaited" role="status">
          Working out what is measured on this path …
        </p>
      )}
    </section>
  );
}
