import { useStore } from '@nanostores/preact';
import type { Decision } from '../../calc/core/decision.ts';
import { decisions } from '../../calc/guide.ts';
import { choiceOf } from '../guide/order.ts';
import { sayAnswer } from '../receipts.ts';
import { useReady } from '../shared/ready.ts';
import { $path, $report, answer } from '../stores.ts';

interface RowProps {
  readonly decision: Decision;
  readonly name: string;
  readonly about: string;
  readonly picked: boolean;
  readonly blocked: string;
  readonly onPick: () => void;
}

function Row({ decision, name, about, picked, blocked, onPick }: RowProps) {
  return (
    <label class="choice">
      <input type="radio" name={decision.id} checked={picked} disabled={blocked !== ''} onChange={onPick} />
      <span>
        {name}
        {about ? <span class="choice-about">{about}</span> : null}
        {blocked ? <span class="choice-blocked">Not as things stand. {blocked}</span> : null}
      </span>
    </label>
  );
}

function FactQuestion({ decision }: { decision: Decision }) {
  const ready = useReady();
  const given = useStore($path).answers[decision.id];
  const choice = choiceOf(useStore($report), decision.id);
  const blockedBy = (option: string) =>
    choice?.blocked
      .find((block) => block.option === option)
      ?.reasons.map((reason) => reason.say)
      .join(' ') ?? '';
  return (
    <fieldset id={`ask-${decision.id}`} class="fact-question" tabIndex={-1} disabled={!ready}>
      <legend>{decision.ask}</legend>
      <p class="field-hint">{decision.why}</p>
      <div class="choice-list">
        {decision.options.map(({ id, label, means }) => (
          <Row
            key={id}
            decision={decision}
            name={label}
            about={means}
            picked={given?.includes(id) ?? false}
            blocked={blockedBy(id)}
            onPick={() => answer(decision.id, [id])}
          />
        ))}
        <Row
          decision={decision}
          name="Not sure yet"
          about={`The plan takes “${sayAnswer(decision, choice?.status === 'open' ? choice.options : decision.assume.slice(0, 1))}”.`}
          picked={given !== undefined && given.length === 0}
          blocked=""
          onPick={() => answer(decision.id, [])}
        />
      </div>
      {decision.findOut ? (
        <details>
          <summary>
            How to find out<span class="visually-hidden">: {decision.name}</span>
          </summary>
          <p class="small">{decision.findOut}</p>
        </details>
      ) : null}
    </fieldset>
  );
}

/** Facts of the lathe and the workshop that are picked and not measured. Nothing is ticked for the owner. */
export function LatheQuestions() {
  return (
    <section class="rule-page">
      <h2>Facts to pick</h2>
      <div class="fact-grid">
        {decisions
          .filter(({ place }) => place === 'lathe')
          .map((decision) => (
            <FactQuestion key={decision.id} decision={decision} />
          ))}
      </div>
    </section>
  );
}
