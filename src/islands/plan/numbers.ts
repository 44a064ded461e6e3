import type { PlannedTask, Report, StagePlan } from '../../calc/evaluate.ts';

/** "3.4": the number of each task, by id: its stage and its place in it. */
export function taskNumbers(stages: readonly StagePlan[]): ReadonlyMap<string, string> {
  return new Map(
    stages.flatMap((stage) => stage.tasks.map((task, at) => [task.id, `${stage.number}.${at + 1}`] as const)),
  );
}

/** Every task by id. */
export const tasksById = (stages: readonly StagePlan[]): ReadonlyMap<string, PlannedTask> =>
  new Map(stages.flatMap((stage) => stage.tasks.map((task) => [task.id, task] as const)));

/** The first stage with a task that waits for this one; undefined where nothing does. */
export function wantedAt({ stages }: Report, task: string): StagePlan | undefined {
  return stages.find((stage) =>
    stage.tasks.some((each) => each.after.includes(task) && each.lathe !== 'cutting'),
  );
}

/** True where the owner keeps another lathe in working order. */
export const keepsAnother = ({ choices }: Report): boolean =>
  choices.some(({ decision, options }) => decision === 'which-lathe' && !options.includes('only-lathe'));

/** True while nothing has been answered and nothing measured: the plan stands on assumed answers alone. */
export const isOutline = ({ path }: Report): boolean =>
  Object.values(path.answers).every((answer) => answer.length === 0) && Object.keys(path.facts).length === 0;
