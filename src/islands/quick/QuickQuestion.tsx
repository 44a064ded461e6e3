import { useStore } from '@nanostores/preact';
import type { Decision, Option } from '../../calc/core/decision.ts';
import type { ChoiceView } from '../../calc/evaluate.ts';
import { choiceOf } from '../guide/order.ts';
import { pick } from '../guide/pick.ts';
import { placeOfQuestion } from '../shared/question-place.ts';
import { useReady } from '../shared/ready.ts';
import { $path, $report, answer } from '../stores.ts';

interface LineProps {
  readonly decision: Decision;
  readonly label: string;
  readonly picked: boolean;
  readonly blocked?: string;
  readonly onPick: (picked: boolean) => void;
}

function Line({ decision, label, picked, blocked = '', onPick }: LineProps) {
  return (
    <label class="choice">
      <input
        type={decision.many ? 'checkbox' : 'radio'}
        name={decision.id}
        checked={picked}
        disabled={blocked !== ''}
        onChange={(event) => onPick(event.currentTarget.checked)}
      />
      <span>
        {label}
        {blocked ? <span class="choice-blocked">Not as things stand. {blocked}</span> : null}
      </span>
    </label>
  );
}

const blockedBy = (choice: ChoiceView | undefined, { id }: Option): string =>
  choice?.blocked
    .find(({ option }) => option === id)
    ?.reasons.map(({ say }) => say)
    .join(' ') ?? '';

function Lines({ decision, choice }: { decision: Decision; choice: ChoiceView | undefined }) {
  const given = useStore($path).answers[decision.id];
  return (
    <div class="choice-list quick-lines">
      {decision.options.map((option) => (
        <Line
          key={option.id}
          decision={decision}
          label={option.label}
          picked={given?.includes(option.id) ?? false}
          blocked={blockedBy(choice, option)}
          onPick={(picked) => pick(decision, option.id, picked)}
        />
      ))}
      <Line
        decision={decision}
        label="Not sure yet"
        picked={given !== undefined && given.length === 0}
        onPick={(picked) => answer(decision.id, picked ? [] : undefined)}
      />
    </div>
  );
}

interface Props {
  readonly decision: Decision;
  /** The heading above asks the same already. */
  readonly isAlone: boolean;
}

/** A question in a few lines: its answers by name, nothing ticked, and where to read about each. */
export function QuickQuestion({ decision, isAlone }: Props) {
  const ready = useReady();
  const choice = choiceOf(useStore($report), decision.id);
  if (choice?.status === 'not-asked') {
    return (
      <p class="quiet small">
        <b>{decision.ask}</b> Not asked. {choice.why}
      </p>
    );
  }
  return (
    <fieldset class={`quick-question${isAlone ? ' is-alone' : ''}`} disabled={!ready}>
      <legend class={isAlone ? 'visually-hidden' : undefined}>{decision.ask}</legend>
      {choice?.status === 'clash' ? (
        <p class="small">Please decide again: an answer or a figure that you gave rules yours out.</p>
      ) : null}
      <Lines decision={decision} choice={choice} />
      <p class="small">
        <a href={placeOfQuestion(decision.id)} data-keep-path>
          What each answer means<span class="visually-hidden">: {decision.name}</span>
        </a>
      </p>
    </fieldset>
  );
}
