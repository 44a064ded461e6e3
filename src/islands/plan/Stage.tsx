import { useStore } from '@nanostores/preact';
import { useMemo } from 'preact/hooks';
import type { Progress } from '../../calc/core/progress.ts';
import type { StagePlan } from '../../calc/evaluate.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { FoldButton, Folded, useFold } from '../shared/Fold.tsx';
import { counted, middleHalf, moneyRange } from '../shared/format.ts';
import { Later } from '../shared/in-turn.tsx';
import { isAskedFor } from '../shared/places.ts';
import { $calendar, type Sheet } from './job.ts';
import { Proof } from './Proof.tsx';
import { StageRisks } from './StageRisks.tsx';
import { TaskTable } from './TaskTable.tsx';
import { taskHours } from './words.ts';

interface Props extends Sheet {
  readonly stage: StagePlan;
  readonly numbers: ReadonlyMap<string, string>;
  readonly stopWork: { readonly before: string; readonly say: string } | undefined;
}

function latheWords({ outOfUse, tasks }: StagePlan): string {
  if (outOfUse) return 'out of use until the next stopping point';
  return tasks.some(({ lathe }) => lathe === 'cutting') ? 'in use, cutting parts' : 'usable by hand';
}

/** Money of a stage in half of the ways; its place is kept while it is being worked out. */
function Money({ stage }: { stage: StagePlan }) {
  const row = useStore($calendar)?.stages.find(({ id }) => id === stage.id);
  const half = row && middleHalf(row.money.twenty);
  return <DimensionLine text={half ? moneyRange(half.from, half.to) : '…'} length={138} />;
}

function Rail({ stage }: { stage: StagePlan }) {
  const cuts = stage.tasks.filter(({ undo }) => undo === 'cannot-be-undone').length;
  return (
    <div class="stage-rail">
      <h2>
        <span class="numeral">{stage.number}</span> {stage.name}
      </h2>
      <dl>
        <div>
          <dt>Hours, quick to slow</dt>
          <dd>
            <DimensionLine text={taskHours(stage.hours)} length={138} />
          </dd>
        </div>
        <div>
          <dt>Money, in half of the ways</dt>
          <dd>
            <Money stage={stage} />
          </dd>
        </div>
        <div>
          <dt>Lathe</dt>
          <dd>{latheWords(stage)}</dd>
        </div>
        {cuts > 0 ? (
          <div>
            <dt>Cannot be undone</dt>
            <dd>{counted(cuts, 'task')}</dd>
          </div>
        ) : null}
      </dl>
    </div>
  );
}

/** "12 tasks, 3 of them done". */
function tasksSaid(ids: readonly string[], done: Progress['done']): string {
  const ticked = ids.filter((id) => id in done).length;
  return `${counted(ids.length, 'task')}${ticked > 0 ? `, ${ticked} of them done` : ''}`;
}

/** One stage: what it costs on the left, what to do in the middle, how you know on the right. */
export function Stage({ stage, numbers, report, stopWork }: Props) {
  const ids = stage.tasks.map(({ id }) => id);
  const fold = useFold(isAskedFor('task', ids));
  const done = report.path.progress?.done ?? {};
  // A fold moves no task: they are not drawn anew.
  const tasks = useMemo(
    () => (
      <>
        <div class="stage-main">
          <TaskTable stage={stage} numbers={numbers} done={done} stopWork={stopWork} />
        </div>
        <div class="stage-proof">
          <Later>
            <Proof tasks={stage.tasks} numbers={numbers} />
          </Later>
          <Later>
            <StageRisks risks={report.risks} stage={stage.id} />
          </Later>
        </div>
      </>
    ),
    [stage, numbers, report, stopWork],
  );
  return (
    <section
      class={`stage-section grid-plan${fold.shutClass}`}
      id={`stage-${stage.id}`}
      aria-label={`Stage ${stage.number}, ${stage.name}`}
    >
      <Rail stage={stage} />
      <FoldButton fold={fold} what={tasksSaid(ids, done)} />
      <Folded fold={fold}>{tasks}</Folded>
    </section>
  );
}
