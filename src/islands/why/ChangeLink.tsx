import { useStore } from '@nanostores/preact';
import { factById } from '../../calc/facts.ts';
import { decisionById } from '../../calc/guide.ts';
import type { Explanation } from '../../calc/why-number.ts';
import { lathePlace } from '../shared/places.ts';
import { placeOfQuestion } from '../shared/question-place.ts';
import { $path } from '../stores.ts';

/** Where the reader can change an input: a field of the lathe page or a question. */
export function ChangeLink({ change }: { change: NonNullable<Explanation['change']> }) {
  const { answers } = useStore($path);
  if ('fact' in change) {
    return (
      <a href={lathePlace(change.fact)} data-keep-path>
        Change<span class="visually-hidden"> {factById(change.fact)?.name}</span> on the lathe page
      </a>
    );
  }
  const open = (answers[change.decision]?.length ?? 0) === 0;
  return (
    <>
      {open ? 'The question is still open; the plan takes this answer. ' : ''}
      <a href={placeOfQuestion(change.decision)} data-keep-path>
        {open ? 'Answer' : 'Change'}: {decisionById(change.decision)?.name ?? change.decision}
      </a>
    </>
  );
}
