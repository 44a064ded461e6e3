import type { Progress } from '../core/progress.ts';
import type { PlannedTask } from '../report.ts';
import { tasks as allTasks, taskIndex } from '../trade.ts';

/** Something done that the plan of today does not agree with. What is done stays done. Plain data. */
export interface Contradiction {
  readonly kind: 'not-in-plan' | 'cannot-be-undone' | 'out-of-order' | 'unknown';
  readonly task: string;
  /** Tasks that should have come first. */
  readonly missing: readonly string[];
  readonly say: string;
}

const named = (id: string): string => allTasks[taskIndex.get(id)!]!.name;

function leftOut(id: string): Contradiction {
  const at = taskIndex.get(id);
  if (at === undefined) {
    const say = `“${id}” is ticked, but no task has that name any more. Its tick is kept.`;
    return { kind: 'unknown', task: id, missing: [], say };
  }
  const { name, undo } = allTasks[at]!;
  return undo === 'cannot-be-undone'
    ? {
        kind: 'cannot-be-undone',
        task: id,
        missing: [],
        say: `“${name}” is done and cannot be undone, but the answers of today do without it. Either the answer goes back, or the plan is made round what has been cut.`,
      }
    : {
        kind: 'not-in-plan',
        task: id,
        missing: [],
        say: `“${name}” is done, but the answers of today do without it. Its hours stay counted; see whether something has to be put back.`,
      };
}

function outOfOrder({ id, name, after }: PlannedTask, progress: Progress): Contradiction[] {
  const missing = after.filter((first) => !(first in progress.done));
  if (missing.length === 0) return [];
  const say = `“${name}” is ticked before ${missing.map((first) => `“${named(first)}”`).join(', ')}. Do that first, and then look at this one again.`;
  return [{ kind: 'out-of-order', task: id, missing, say }];
}

/** What is ticked against the plan of today: left out by another answer, or ticked before its time. */
export function contradictionsOf(tasks: readonly PlannedTask[], progress: Progress): Contradiction[] {
  const inPlan = new Map(tasks.map((task) => [task.id, task]));
  return Object.keys(progress.done).flatMap((id) => {
    const task = inPlan.get(id);
    return task ? outOfOrder(task, progress) : [leftOut(id)];
  });
}
