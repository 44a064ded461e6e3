import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import type { Report } from '../../calc/evaluate.ts';
import type { Working } from '../../calc/working.ts';
import { useAnswer } from '../ask/use-answer.ts';
import { Send } from '../share/Send.tsx';
import { Boundary, WithFigures } from '../shared/Boundary.tsx';
import { counted, hours, hoursRange, middleHalf } from '../shared/format.ts';
import { NotHere } from '../shared/NotHere.tsx';
import { Notices } from '../shared/Notices.tsx';
import { isAskedFor, to } from '../shared/places.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { $path, $report, start } from '../stores.ts';
import { ShelfList } from './ShelfList.tsx';
import { StagePart } from './StagePart.tsx';
import { type Names, TaskCard, TaskTick } from './TaskCard.tsx';

interface Props {
  readonly report: Report;
  readonly working: Working;
  readonly names: Names;
}

function namesOf(report: Report, working: Working): Names {
  const tasks = new Map(report.stages.flatMap((stage) => stage.tasks.map(({ id, name }) => [id, name])));
  const parts = new Map(report.bill.once.map(({ part, name }) => [part, name]));
  const shelf = new Map(working.shelf.lines.map(({ id, what }) => [id, what]));
  return { task: (id) => tasks.get(id), part: (id) => parts.get(id), shelf: (id) => shelf.get(id) };
}

function Stand({ report, working }: Omit<Props, 'names'>) {
  const done = working.tasks.filter(({ standing }) => standing === 'done').length;
  const { spent, left } = working.hours;
  const half = middleHalf(left.twenty);
  const stage = report.stages.find(({ tasks }) => tasks.some(({ id }) => id === working.next));
  const begun = done > 0 || spent > 0;
  return (
    <p class="lede">
      {stage ? `Stage ${stage.number}, ${stage.name}. ` : ''}
      {begun
        ? `${done} of ${counted(working.tasks.length, 'task')} ticked, ${hours(spent)} written down. Half of the ways take another ${hoursRange(half.from, half.to)}.`
        : `${counted(working.tasks.length, 'task lies', 'tasks lie')} ahead; half of the ways take ${hoursRange(half.from, half.to)}.`}
    </p>
  );
}

function Odd({ working }: { working: Working }) {
  if (working.contradictions.length === 0) return null;
  return (
    <div class="notice look">
      <p>
        <b>What is done and what the plan says do not agree.</b> Ticks stay as they are.
      </p>
      <ul>
        {working.contradictions.map(({ task, say }) => (
          <li key={`${task} ${say}`}>{say}</li>
        ))}
      </ul>
    </div>
  );
}

function Next({ report, working, names }: Props) {
  const task = report.stages.flatMap(({ tasks }) => tasks).find(({ id }) => id === working.next);
  const stand = working.tasks.find(({ id }) => id === working.next);
  if (!task || !stand) {
    const isDone = working.tasks.every(({ standing }) => standing === 'done');
    return (
      <section class="bench-next" aria-label="Next">
        <h2>{isDone ? 'Everything is ticked' : 'Nothing can be done before something comes'}</h2>
        <p>
          {isDone
            ? 'Keep the readings and the settings with the machine, and save everything as a file.'
            : 'Every task waits for a part or a tick. Look at what is blocked below, or at the buy list.'}
        </p>
      </section>
    );
  }
  return (
    <section class="bench-next" aria-label="Next">
      <p class="cell-label">Next</p>
      {working.stopWork?.before === task.id ? (
        <div class="stop-work">
          <ResultMark result="stop" word="stop work" />
          <p>{working.stopWork.say}</p>
        </div>
      ) : null}
      <h2>{task.name}</h2>
      <TaskCard key={task.id} task={task} stand={stand} readings={working.readings} names={names} />
      <TaskTick task={task}>
        <b>Done</b>
      </TaskTick>
    </section>
  );
}

/** Under the thumb when a stage is read to its end: the one before it and the one after it. */
function Turn({ stages, at, go }: { stages: Report['stages']; at: number; go: (stage: string) => void }) {
  const turn = (stage: Report['stages'][number] | undefined, which: string) =>
    stage ? (
      <button
        type="button"
        class="button"
        onClick={() => {
          go(stage.id);
          document.getElementById('tasks')?.scrollIntoView();
        }}
      >
        {which}: {stage.number} {stage.name}
      </button>
    ) : null;
  return (
    <p class="stage-turn no-print">
      {turn(stages[at - 1], 'Before')} {turn(stages[at + 1], 'After')}
    </p>
  );
}

/** One stage at a time, the one in hand first; every other is a press away. */
function StageByStage({ report, working, names }: Props) {
  const inHand = report.stages.find(({ tasks }) => tasks.some(({ id }) => id === working.next));
  const asked = report.stages.find(({ tasks }) =>
    isAskedFor(
      'task',
      tasks.map(({ id }) => id),
    ),
  );
  const [chosen, setChosen] = useState<string | undefined>(asked?.id);
  const stage = report.stages.find(({ id }) => id === chosen) ?? inHand ?? report.stages[0];
  if (!stage) return null;
  const doneOf = (ids: readonly { id: string }[]) =>
    ids.filter(({ id }) => working.tasks.find((stand) => stand.id === id)?.standing === 'done').length;
  return (
    <section class="rule-section" id="tasks" tabIndex={-1}>
      <h2>Stage by stage</h2>
      <NotHere kind="task" ids={working.tasks.map(({ id }) => id)} />
      <div class="field">
        <label for="bench-stage">Stage</label>
        <span class="field-cells">
          <select
            id="bench-stage"
            value={stage.id}
            onChange={(event) => setChosen(event.currentTarget.value)}
          >
            {report.stages.map(({ id, number, name, tasks }) => (
              <option key={id} value={id}>
                {number} {name}: {doneOf(tasks)} of {tasks.length}
              </option>
            ))}
          </select>
        </span>
      </div>
      <StagePart stage={stage} working={working} names={names} />
      <Turn stages={report.stages} at={report.stages.indexOf(stage)} go={setChosen} />
    </section>
  );
}

function Sheet({ report, working }: Omit<Props, 'names'>) {
  const names = namesOf(report, working);
  const parts = { report, working, names };
  return (
    <>
      <Stand {...parts} />
      <Odd working={working} />
      <Next {...parts} />
      <StageByStage {...parts} />
      <ShelfList working={working} />
      <section class="rule-section">
        <h2>Elsewhere</h2>
        <ul>
          <li>
            <a href={to('plan/')} data-keep-path>
              The whole plan, and paper to hang by the lathe
            </a>
          </li>
          <li>
            <a href={to('calendar/')} data-keep-path>
              The calendar: weeks, parcels, where you may stop
            </a>
          </li>
          <li>
            <a href={to('buy-list/')} data-keep-path>
              The buy list, and a file that keeps everything
            </a>
          </li>
        </ul>
        <p class="quiet small">
          Ticks, readings, hours and notes are kept on this device only. Save everything as a file on the buy
          list now and then.
        </p>
        <Send path={useStore($path)} page="bench/" />
      </section>
    </>
  );
}

/** What to do now, what comes after, and what was measured: the plan as it is worked from. */
export function Bench() {
  const path = useStore($path);
  const report = useStore($report);
  useEffect(start, []);
  const { answer: working } = useAnswer('working', path, report !== undefined);
  return (
    <div class="page bench">
      <Notices />
      <h1>At the bench</h1>
      <WithFigures what="the bench page">
        {report && working ? (
          <Boundary what="the bench page">
            <Sheet report={report} working={working} />
          </Boundary>
        ) : (
          <p role="status" class="until-drawn">
            Working out what comes next …
          </p>
        )}
      </WithFigures>
    </div>
  );
}
