import { decisionById } from '../../calc/guide.ts';
import { placeOfQuestion } from '../shared/question-place.ts';

/** Links to questions, by their short names. */
export function QuestionLinks({ decisions }: { decisions: readonly string[] }) {
  const named = decisions.flatMap((id) => decisionById(id) ?? []);
  if (named.length === 0) return null;
  return (
    <span class="small no-print">
      {'Questions: '}
      {named.map(({ id, name }, at) => (
        <span key={id}>
          {at > 0 ? ', ' : ''}
          <a href={placeOfQuestion(id)} data-keep-path>
            {name}
          </a>
        </span>
      ))}
    </span>
  );
}
