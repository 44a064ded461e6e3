import type { Report, StagePlan } from '../../calc/evaluate.ts';
import { laterHolds, stopWorkOf } from '../../calc/stage-notes.ts';
import { middleHalf, weeksRange } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { NotHere } from '../shared/NotHere.tsx';
import { to } from '../shared/places.ts';
import { StageBar } from '../shared/StageBar.tsx';
import { HoldPoint, StoppingPoint } from './Between.tsx';
import type { Sheet } from './job.ts';
import { MakeFirst } from './MakeFirst.tsx';
import { keepsAnother, taskNumbers, tasksById } from './numbers.ts';
import { Stage } from './Stage.tsx';

/** "Hold point A" → "A". */
const letterOf = (name: string): string => name.split(' ').at(-1) ?? '';

const barOf = (stage: StagePlan) => ({
  id: stage.id,
  numeral: String(stage.number),
  name: stage.name,
  hours: stage.hours[1],
  outOfUse: stage.outOfUse,
  mayStopAfter: stage.stop !== undefined,
  ...(stage.hold ? { holdAfter: letterOf(stage.hold.name) } : {}),
});

function Bar({ report }: { report: Report }) {
  const { from, to } = middleHalf(report.weeksOut.twenty);
  const state = keepsAnother(report) ? 'this lathe apart' : 'lathe out of use';
  return (
    <StageBar
      stages={report.stages.map(barOf)}
      outOfUseText={`${state}, on and off: ${weeksRange(from, to)} at your hours a week`}
    />
  );
}

/** The order of work: the bar of stages, then each stage with its tasks, its hold point and its stopping point. */
export function Stages({ report }: Sheet) {
  const { stages } = report;
  const done = report.path.progress?.done ?? {};
  const ordered = stages.flatMap((stage) => stage.tasks);
  const later = laterHolds(ordered, keepsAnother(report));
  const stopWork = stopWorkOf(ordered, { done });
  const numbers = taskNumbers(stages);
  const tasks = tasksById(stages);
  const listAfter = stages.findLast((stage) => stage.id === 'make-first') ?? stages[0];
  return (
    <>
      <section class="rule-section plan-bar" id="stages" tabIndex={-1}>
        <h2>Stages and tasks</h2>
        <NotHere kind="task" ids={ordered.map(({ id }) => id)} />
        <p>
          Each stage is as long as its likely hours. At a hold point you go on only when everything in it is
          true. At a may-stop mark you can stop for good and have a working machine.
        </p>
        <Bar report={report} />
        <p class="no-print">
          When:{' '}
          <a href={to('calendar/')} data-keep-path>
            the calendar
          </a>
        </p>
      </section>
      {stages.map((stage) => (
        <Later key={stage.id}>
          {later
            .filter(({ opens }) => opens === stage.id)
            .map((hold) => (
              <HoldPoint key={hold.id} hold={hold} numbers={numbers} tasks={tasks} done={done} />
            ))}
          <Stage stage={stage} numbers={numbers} report={report} stopWork={stopWork} />
          {stage === listAfter ? (
            <Later>
              <MakeFirst report={report} />
            </Later>
          ) : null}
          {stage.hold ? <HoldPoint hold={stage.hold} numbers={numbers} tasks={tasks} done={done} /> : null}
          {stage.stop ? <StoppingPoint stop={stage.stop} /> : null}
        </Later>
      ))}
    </>
  );
}
