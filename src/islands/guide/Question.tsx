import { useStore } from '@nanostores/preact';
import type { Decision } from '../../calc/core/decision.ts';
import type { Answer } from '../../calc/core/path.ts';
import type { ChoiceView } from '../../calc/evaluate.ts';
import { decisionById } from '../../calc/guide.ts';
import { EditionNote } from '../shared/EditionNote.tsx';
import { Notices } from '../shared/Notices.tsx';
import { bookQuestionPlace, questionPlace, to } from '../shared/places.ts';
import { useReady } from '../shared/ready.ts';
import { $path, $report, answer } from '../stores.ts';
import { ChoiceRow, OptionBlock } from './OptionBlock.tsx';
import { choiceOf, neighbour, placeOf } from './order.ts';
import { pick } from './pick.ts';
import { QuestionLink } from './QuestionLink.tsx';
import { Receipt } from './Receipt.tsx';
import { Standing } from './Standing.tsx';
import { StripHead } from './StripHead.tsx';
import { useStrips } from './use-strips.ts';

function Head({ decision }: { decision: Decision }) {
  const { room, number, of } = placeOf(decision);
  return (
    <>
      <p class="question-place">
        Room {room.number}, {room.name} · question {number} of {of}
      </p>
      <h1 id="question-title" tabIndex={-1}>
        {decision.ask}
      </h1>
      <p class="question-why">
        <b>Why we ask.</b> {decision.why}
      </p>
      {decision.thumb ? (
        <p class="question-thumb">
          <b>Rule of thumb.</b> {decision.thumb}
        </p>
      ) : null}
      {decision.findOut ? (
        <details class="find-out">
          <summary>How to find out</summary>
          <p>{decision.findOut}</p>
        </details>
      ) : null}
    </>
  );
}

interface AnswersProps {
  readonly decision: Decision;
  readonly given: Answer | undefined;
  readonly choice: ChoiceView | undefined;
}

function Answers({ decision, given, choice }: AnswersProps) {
  const ready = useReady();
  const idle = choice?.status === 'not-asked';
  const unsure = given !== undefined && given.length === 0;
  const strips = useStrips(decision.id);
  return (
    <fieldset aria-labelledby="question-title question-how" disabled={!ready}>
      <legend id="question-how">{decision.many ? 'Tick all that apply' : 'Choose one'}</legend>
      {idle ? null : <StripHead scale={strips.scale} />}
      <div class={idle ? 'options options-plain' : 'options'}>
        {decision.options.map((option) => (
          <OptionBlock
            key={option.id}
            decision={decision}
            option={option}
            picked={given?.includes(option.id) ?? false}
            block={choice?.blocked.find((block) => block.option === option.id)}
            idle={idle}
            strips={strips}
            onPick={(picked) => pick(decision, option.id, picked)}
          />
        ))}
        <ChoiceRow
          id={`${decision.id}-not-sure`}
          decision={decision}
          title="Not sure yet"
          about={
            decision.open === 'options'
              ? 'The plan takes the answer named above; the range keeps every answer that is still allowed.'
              : 'The plan takes the answer named above until you know.'
          }
          picked={unsure}
          disabled={idle}
          onPick={(picked) => answer(decision.id, picked ? [] : undefined)}
        />
      </div>
    </fieldset>
  );
}

function Foot({
  decision,
  before,
  next,
  back,
}: {
  decision: Decision;
  before: Decision | undefined;
  next: Decision | undefined;
  back: string | undefined;
}) {
  const returning = back ? decisionById(back) : undefined;
  return (
    <nav class="guide-foot" aria-label="Questions before and after">
      <QuestionLink class="button" href={before ? questionPlace(before.id) : to('questions/')}>
        Back
      </QuestionLink>
      <span class="between">
        <a href={bookQuestionPlace(decision)} data-keep-path>
          Read about it in the book
        </a>
        {returning ? (
          <QuestionLink href={questionPlace(returning.id)}>Return to: {returning.ask}</QuestionLink>
        ) : null}
        {back === 'check' ? (
          <a href={to('questions/')} data-keep-path>
            Return to your answers
          </a>
        ) : null}
      </span>
      <QuestionLink class="button primary" href={next ? questionPlace(next.id) : to('questions/')}>
        {next ? 'Continue' : 'Check your answers'}
      </QuestionLink>
    </nav>
  );
}

/** A question on a page of its own: why it is asked, every answer with what it means, and what the last answer moved. */
export function Question({ id, back }: { id: string; back?: string | undefined }) {
  const path = useStore($path);
  const report = useStore($report);
  const decision = decisionById(id);
  if (!decision) return null;
  const choice = choiceOf(report, id);
  const next = neighbour(id, 1, report);
  return (
    <article class="question" key={id}>
      <Notices />
      <EditionNote />
      <Head decision={decision} />
      <Standing decision={decision} choice={choice} next={next} />
      <Answers decision={decision} given={path.answers[id]} choice={choice} />
      <Receipt />
      <Foot decision={decision} before={neighbour(id, -1, report)} next={next} back={back} />
    </article>
  );
}
