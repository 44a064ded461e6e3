import { useStore } from '@nanostores/preact';
import type { Worth } from '../../calc/choosing.ts';
import { addFamily, MOST_FAMILIES } from '../families.ts';
import { placeOfQuestion } from '../shared/question-place.ts';
import { $path, answer } from '../stores.ts';
import { FamilyFields } from './FamilyFields.tsx';
import { Gains } from './Gains.tsx';

const PURPOSE = 'purpose';
const HOBBY = 'learning';

/** The switch is one of the answers to a question, so that plan, checks and verdict hear of it too. */
function Hobby() {
  const purposes = useStore($path).answers[PURPOSE] ?? [];
  const on = purposes.includes(HOBBY);
  const set = (wanted: boolean) => {
    const others = purposes.filter((id) => id !== HOBBY);
    const next = wanted ? [...others, HOBBY] : others;
    answer(PURPOSE, next.length > 0 ? next : undefined);
  };
  return (
    <div class="hobby no-print">
      <label class="choice">
        <input type="checkbox" checked={on} onChange={(event) => set(event.currentTarget.checked)} />
        <span>
          <b>My hours are the hobby</b>
        </span>
      </label>
      <p class="small quiet">
        Then no pay-back is worked out: the hours are what you buy. It is one of the answers to{' '}
        <a href={placeOfQuestion(PURPOSE)} data-keep-path>
          what it should make
        </a>
        .
      </p>
    </div>
  );
}

interface Props {
  readonly worth: Worth;
}

/** What the owner makes again and again, typed, and what a conversion gives back of its hours. */
export function Parts({ worth }: Props) {
  const { families = [] } = useStore($path);
  return (
    <section class="rule-section" id="parts" tabIndex={-1}>
      <h2>Parts you make again and again</h2>
      <p>
        Parts that one program makes are one family. Type up to five of them with your own times. They stay on
        this device and in your file, and in a link only when you tick it, without their names.
      </p>
      {families.map((family, at) => (
        <FamilyFields key={at} family={family} at={at} />
      ))}
      <p class="no-print">
        {families.length < MOST_FAMILIES ? (
          <button type="button" class="button" onClick={addFamily}>
            {families.length === 0 ? 'Add a family of parts' : 'Add another family'}
          </button>
        ) : (
          <span class="quiet">Five families are the most that fit this sheet.</span>
        )}
      </p>
      <Hobby />
      <Gains worth={worth} />
    </section>
  );
}
