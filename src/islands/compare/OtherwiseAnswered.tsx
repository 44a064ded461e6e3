import { useId, useState } from 'preact/hooks';
import type { ChoiceView, Report } from '../../calc/evaluate.ts';
import { decisionById, rooms } from '../../calc/guide.ts';
import { withOwn } from '../own-part.ts';
import { $path } from '../stores.ts';
import { putBeside } from './columns.ts';

interface Props {
  readonly report: Report;
  readonly full: boolean;
}

interface Option {
  readonly id: string;
  readonly label: string;
  readonly isRuledOut: boolean;
}

/** The other answers that a question allows; those that another answer rules out cannot be taken. */
function otherAnswers({ decision, options, blocked }: ChoiceView): Option[] {
  const ruledOut = new Set(blocked.map(({ option }) => option));
  return (decisionById(decision)?.options ?? [])
    .filter(({ id, incomplete }) => incomplete === undefined && !(options.length === 1 && options[0] === id))
    .map(({ id, label }) => ({ id, label, isRuledOut: ruledOut.has(id) }));
}

/** Questions of the guide that arise on the path and have another answer. */
const questionsOf = ({ choices }: Report): ChoiceView[] =>
  choices.filter(
    (choice) =>
      choice.place === 'guide' &&
      choice.status !== 'not-asked' &&
      otherAnswers(choice).some(({ isRuledOut }) => !isRuledOut),
  );

const FIRST = 'control';

function put(decision: string, option: string): void {
  const path = withOwn($path.get(), {});
  putBeside(
    { kind: 'path', path: { ...path, answers: { ...path.answers, [decision]: [option] } } },
    { own: true },
  );
}

/** A copy of A with one answer changed. */
export function OtherwiseAnswered({ report, full }: Props) {
  const id = useId();
  const questions = questionsOf(report);
  const [asked, setAsked] = useState(FIRST);
  const [option, setOption] = useState<string>();
  const choice = questions.find(({ decision }) => decision === asked) ?? questions[0];
  if (!choice) return null;
  const answers = otherAnswers(choice);
  const taken =
    answers.find((each) => each.id === option && !each.isRuledOut) ??
    answers.find((each) => !each.isRuledOut);
  return (
    <div class="compare-way">
      <label for={`${id}-question`}>A, answered otherwise</label>
      <select
        id={`${id}-question`}
        value={choice.decision}
        onChange={(event) => setAsked(event.currentTarget.value)}
      >
        {rooms.map((room) => (
          <optgroup key={room.id} label={room.name}>
            {questions
              .filter(({ subsystem }) => subsystem === room.id)
              .map(({ decision }) => (
                <option key={decision} value={decision}>
                  {decisionById(decision)?.name}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
      <label for={`${id}-answer`} class="small">
        With this answer
      </label>
      <select
        id={`${id}-answer`}
        value={taken?.id}
        onChange={(event) => setOption(event.currentTarget.value)}
      >
        {answers.map((each) => (
          <option key={each.id} value={each.id} disabled={each.isRuledOut}>
            {each.label}
            {each.isRuledOut ? ' (ruled out by another answer)' : ''}
          </option>
        ))}
      </select>
      <button
        type="button"
        class="button small"
        disabled={full || !taken}
        onClick={() => taken && put(choice.decision, taken.id)}
      >
        Put it beside A<span class="visually-hidden">: A, answered otherwise</span>
      </button>
    </div>
  );
}
