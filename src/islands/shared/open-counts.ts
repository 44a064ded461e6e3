import type { Report } from '../../calc/evaluate.ts';
import { counted } from './format.ts';

type Views = Pick<Report, 'choices'>;

const openAt = ({ choices }: Views, place: 'guide' | 'lathe'): number =>
  choices.filter((view) => view.place === place && (view.status === 'open' || view.status === 'clash'))
    .length;

/** Questions asked on this path, and how many of them are answered. What the lathe page asks is counted apart. */
export function questionsAnswered(report: Views): { readonly answered: number; readonly asked: number } {
  const asked = report.choices.filter(
    ({ place, status }) => place === 'guide' && status !== 'not-asked',
  ).length;
  return { asked, answered: asked - openAt(report, 'guide') };
}

/** "55 questions and 10 facts about the lathe", "1 question"; empty where nothing is open. */
export function openWords(report: Views): string {
  const [questions, facts] = [openAt(report, 'guide'), openAt(report, 'lathe')];
  return [
    ...(questions > 0 ? [counted(questions, 'question')] : []),
    ...(facts > 0 ? [counted(facts, 'fact about the lathe', 'facts about the lathe')] : []),
  ].join(' and ');
}
