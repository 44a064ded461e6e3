import type { Path } from '../../calc/core/path.ts';
import { sizeNames } from '../../calc/facts.ts';
import { decisionById, optionById } from '../../calc/guide.ts';
import { counted } from '../shared/format.ts';

function answerTo(path: Path, id: string): string | undefined {
  const decision = decisionById(id);
  const labels = (path.answers[id] ?? []).map((option) => decision && optionById(decision, option)?.label);
  return labels[0];
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Answers given, "not sure yet" not counted. */
export const answeredIn = ({ answers }: Path): number =>
  Object.values(answers).filter((answer) => answer.length > 0).length;

/** "24 answers". */
export function answersIn(path: Path): string {
  const answered = answeredIn(path);
  return answered === 0 ? 'no answers' : counted(answered, 'answer');
}

/** What a path without a name is called: what is driven and in which order, else its size and how much is answered. */
export function calledAfter(path: Path): string {
  const [driven, order] = [answerTo(path, 'driven-axes'), answerTo(path, 'order-of-work')];
  if (driven) return order ? `${driven}; ${lower(order)}` : driven;
  return `${capital(sizeNames[path.size])} lathe, ${answersIn(path)}`;
}
