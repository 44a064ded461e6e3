import type { Decision } from '../../calc/core/decision.ts';
import type { ChoiceView } from '../../calc/evaluate.ts';
import { sayAnswer } from '../receipts.ts';
import { questionPlace } from '../shared/places.ts';
import { QuestionLink } from './QuestionLink.tsx';

interface Props {
  readonly decision: Decision;
  readonly choice: ChoiceView | undefined;
  readonly next: Decision | undefined;
}

function NotAsked({ choice, next }: { choice: ChoiceView; next: Decision | undefined }) {
  return (
    <div class="notice">
      <p>
        <b>This question is not asked on your path.</b> {choice.why}
      </p>
      {next ? (
        <p>
          <QuestionLink href={questionPlace(next.id)}>Next question: {next.ask}</QuestionLink>
        </p>
      ) : null}
    </div>
  );
}

function Clash({ decision, choice }: { decision: Decision; choice: ChoiceView }) {
  return (
    <div class="notice look">
      <p>
        <b>Please decide again.</b> You chose “{sayAnswer(decision, choice.refused)}”, and an answer or a
        figure you gave rules it out. Your answer is kept. Until you decide, the plan takes “
        {sayAnswer(decision, choice.options)}”.
      </p>
    </div>
  );
}

/** How the question stands on this path, above its answers: what the plan takes, or why it is not asked. */
export function Standing({ decision, choice, next }: Props) {
  if (choice?.status === 'not-asked') return <NotAsked choice={choice} next={next} />;
  if (choice?.status === 'clash') return <Clash decision={decision} choice={choice} />;
  if (choice?.status === 'answered') {
    return <p class="compared-with">The plan takes your answer. You can change it at any time.</p>;
  }
  const taken = choice?.options ?? decision.assume.slice(0, 1);
  return (
    <p class="compared-with">
      Until you answer, the plan takes <b>“{sayAnswer(decision, taken)}”</b>. {decision.assumeWhy}
    </p>
  );
}
