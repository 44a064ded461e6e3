import type { Progress } from '../core/progress.ts';
import type { PlannedTask } from '../report.ts';

/** Where mains work begins: the plan stops to say so. Plain data. */
export interface StopWork {
  /** The first task on mains that is not ticked. */
  readonly before: string;
  /** Every task of the plan that touches mains. */
  readonly tasks: readonly string[];
  readonly say: string;
}

const STOP_WORK =
  'Stop here. Mains work begins. Your local wiring rules come first; new circuits, and whatever you are not sure of, are for a licensed electrician. Plug out, wait the longest time on any label, measure under 60 V with a meter tried before and after. Not alone, not late, nothing live.';

/** The note before the first mains task that is not ticked; missing where the plan has none left. */
export function stopWorkOf(
  tasks: readonly PlannedTask[],
  { done }: Pick<Progress, 'done'>,
): StopWork | undefined {
  const mains = tasks.filter((task) => task.mains).map((task) => task.id);
  const before = mains.find((id) => !(id in done));
  return before === undefined ? undefined : { before, tasks: mains, say: STOP_WORK };
}
