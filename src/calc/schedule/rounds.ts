import type { PlannedTask } from '../report.ts';

/** Tasks that end a stage which is built, used and paid for by itself; one round of buying leads to each. */
const stageEnds = ['make-stage-one-usable', 'make-stage-two-usable'] as const;

/** A task with everything that comes before it. */
export function withAncestors(
  ids: readonly string[],
  before: ReadonlyMap<string, readonly string[]>,
): Set<string> {
  const found = new Set<string>();
  const waiting = [...ids];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (found.has(id)) continue;
    found.add(id);
    waiting.push(...(before.get(id) ?? []));
  }
  return found;
}

/** One stretch of the job that is bought and built together; `opens` is the task that ends the one before. */
export interface Round {
  readonly opens: string | undefined;
  readonly tasks: readonly PlannedTask[];
}

/**
 * The plan in the order in which one person works it. In stages, what a usable first stage needs comes first, then the
 * second, then the rest, whatever stage it is listed under: cross-slide parts are made once the carriage runs.
 */
export function roundsOf(ordered: readonly PlannedTask[]): Round[] {
  const before = new Map(ordered.map((task) => [task.id, task.after]));
  const placed = new Set<string>();
  const rounds: Round[] = [];
  let opens: string | undefined;
  for (const end of [...stageEnds.filter((id) => before.has(id)), undefined]) {
    const wanted = end === undefined ? new Set(before.keys()) : withAncestors([end], before);
    const tasks = ordered.filter(({ id }) => wanted.has(id) && !placed.has(id));
    for (const { id } of tasks) placed.add(id);
    if (tasks.length > 0) rounds.push({ opens, tasks });
    opens = end;
  }
  return rounds;
}
