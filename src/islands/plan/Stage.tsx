import type { Report, StagePlan } from '../../calc/evaluate.ts';
import { DimensionLine } from '../shared/DimensionLine.tsx';
import { counted } from '../shared/format.ts';
import { FoldButton, useFold } from './Fold.tsx';
import { Proof } from './Proof.tsx';
import { StageRisks } from './StageRisks.tsx';
import { TaskTable } from './TaskTable.tsx';
import { taskHours } from './words.ts';

interface Props {
  readonly stage: StagePlan;
  readonly numbers: ReadonlyMap<string, string>;
  readonly report: Report;
}

function latheWords({ outOfUse, tasks }: StagePlan): string {
  if (outOfUse) return 'out of use until the next stopping point';
  return tasks.some(({ lathe }) => lathe === 'cutting') ? 'in use, cutting parts' : 'usable by hand';
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
export function Stage({ stage, numbers, report }: Props) {
  const fold = useFold();
  return (
    <section
      class={`stage-section grid-plan${fold.shutClass}`}
      id={`stage-${stage.id}`}
      aria-label={`Stage ${stage.number}, ${stage.name}`}
    >
      <Rail stage={stage} />
      <FoldButton fold={fold} what={counted(stage.tasks.length, 'task')} />
      <div class="stage-main">
        <TaskTable stage={stage} numbers={numbers} />
      </div>
      <div class="stage-proof">
        <Proof tasks={stage.tasks} numbers={numbers} />
        <StageRisks risks={report.risks} stage={stage.id} />
      </div>
    </section>
  );
}
