import type { Block } from '../../calc/evaluate.ts';
import { decisionById } from '../../calc/guide.ts';
import { lathePlace, questionPlace } from '../shared/places.ts';
import { ResultMark } from '../shared/ResultMark.tsx';
import { QuestionLink } from './QuestionLink.tsx';

/** The way out of a block: the answer to change, with a way back to here. */
function WayOut({ decision, back }: { decision: string; back: string }) {
  const other = decisionById(decision);
  if (!other) return null;
  const href = other.place === 'lathe' ? lathePlace(decision, back) : questionPlace(decision, back);
  return (
    <QuestionLink class="button small" href={href}>
      Change: {other.name}
    </QuestionLink>
  );
}

/** Why an option cannot be taken as things stand, and what to change so that it can. */
export function Blocked({ block, question, id }: { block: Block; question: string; id: string }) {
  const ways = [...new Set(block.reasons.flatMap((reason) => reason.clash))];
  const reasons = [...new Set(block.reasons.map((reason) => reason.say))];
  return (
    <div class="option-why">
      <div id={id}>
        {reasons.map((say, at) => (
          <p key={say}>
            {at === 0 ? <ResultMark result="stop" word="Not as things stand." /> : null} {say}
          </p>
        ))}
      </div>
      <p class="way-out">
        {ways.map((decision) => (
          <WayOut key={decision} decision={decision} back={question} />
        ))}
        {ways.length === 0 ? (
          <a class="button small" href={lathePlace(undefined, question)} data-keep-path>
            Look at your lathe’s figures
          </a>
        ) : null}
      </p>
    </div>
  );
}
