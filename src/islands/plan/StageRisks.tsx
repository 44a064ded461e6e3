import type { StageId } from '../../calc/core/task.ts';
import type { RiskRow } from '../../calc/evaluate.ts';
import { chanceOfTwenty } from '../shared/format.ts';
import { ResultMark } from '../shared/ResultMark.tsx';

const MOST = 3;

/** The likeliest troubles of one stage with what prevents them, beside the work they strike. */
export function StageRisks({ risks, stage }: { risks: readonly RiskRow[]; stage: StageId }) {
  const here = risks.filter((risk) => risk.stage === stage);
  const shown = [...here.filter(({ injury }) => injury), ...here.filter(({ injury }) => !injury)].slice(
    0,
    MOST,
  );
  return (
    <>
      {shown.map((risk) => (
        <p key={risk.id} class="stage-risk">
          <ResultMark result={risk.injury ? 'stop' : 'look'} word={risk.injury ? 'injury' : 'look'} />{' '}
          {risk.name} ({chanceOfTwenty(risk.chance)}). {risk.prevent}
        </p>
      ))}
    </>
  );
}
