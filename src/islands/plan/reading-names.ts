import type { Report } from '../../calc/evaluate.ts';
import { taskNumbers, tasksById } from './numbers.ts';

/** What tasks and risks are called on this sheet. */
export interface Names {
  readonly number: (task: string) => string;
  readonly task: (task: string) => string;
  readonly risk: (risk: string) => string;
}

export function namesOf({ stages, risks }: Report): Names {
  const [numbers, tasks] = [taskNumbers(stages), tasksById(stages)];
  const risk = new Map(risks.map(({ id, name }) => [id, name]));
  return {
    number: (id) => numbers.get(id) ?? '',
    task: (id) => `${numbers.get(id) ?? ''} ${tasks.get(id)?.name ?? id}`.trim(),
    risk: (id) => risk.get(id) ?? id,
  };
}
