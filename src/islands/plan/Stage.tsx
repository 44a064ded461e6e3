import type { StagePlan } from '../../calc/evaluate.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { counted, middleHalf, moneyRange } from '../shared/format.ts';
import { isAskedFor } from '../shared/places.ts';
import { FoldButton, useFold } from './Fold.tsx';
import type { Job, Sheet } from './job.ts';
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
function moneyOf({ calendar }: Job, stage: StagePlan): string {
  const row = calendar?.stages.find(({ id }) => id === stage.id);
  if (!row) return '…';
  const { from, to } = middleHalf(row.money.twenty);
  return moneyRange(from, to);
}

function Rail({ stage, job }: { stage: StagePlan; job: Job }) {
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
            <DimensionLine text={moneyOf(job, stage)} length={138} />
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

/** One stage: what it costs on the left, what to do in the middle, how you know on the right. */
export function Stage({ stage, numbers, report, job, stopWork }: Props) {
  const ids = stage.tasks.map(({ id }) => id);
  const fold = useFold(isAskedFor('task', ids));
  return (
    <section
      class={`stage-section grid-plan${fold.shutClass}`}
      id={`stage-${stage.id}`}
      aria-label={`Stage ${stage.number}, ${stage.name}`}
    >
      <Rail stage={stage} job={job} />
      <FoldButton fold={fold} what={counted(stage.tasks.length, 'task')} />
      <div class="stage-main">
        <TaskTable
          stage={stage}
          numbers={numbers}
          done={report.path.progress?.done ?? {}}
          stopWork={stopWork}
        />
      </div>
      <div class="stage-proof">
        <Proof tasks={stage.tasks} numbers={numbers} />
        <StageRisks risks={report.risks} stage={stage.id} />
      </div>
    </section>
  );
}
