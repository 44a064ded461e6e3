import type { StageId } from '../core/task.ts';
import type { PlannedTask } from '../report.ts';
import { roundsOf } from './rounds.ts';

/** A make-first hold after the first one. Plain data. */
export interface LaterHold {
  readonly id: string;
  readonly name: string;
  readonly say: string;
  /** The tasks that must be true before it is passed. */
  readonly tasks: readonly string[];
  /** The stage that waits for it. */
  readonly opens: StageId;
}

const LATER_ROUND =
  'Nothing that the next stage takes apart still needs this lathe: its parts are made, measured and on the shelf, with a spare of what could be spoilt.';

const isCut = ({ lathe }: PlannedTask): boolean => lathe === 'cutting';

/** The stage that a round opens: where it first takes the lathe apart, never before the stage of an earlier round. */
function opened(tasks: readonly PlannedTask[], stages: readonly StageId[], from: number): number {
  const places = tasks
    .filter((task) => !isCut(task))
    .map((task) => ({ task, at: stages.indexOf(task.stage) }));
  const later = places.filter(({ at }) => at >= from);
  return (later.find(({ task }) => task.lathe === 'out') ?? later.at(-1))?.at ?? stages.length - 1;
}

/** In stages an only lathe has a make-first hold before each of them; with another lathe there is none. */
export function laterHolds(ordered: readonly PlannedTask[], otherLathe: boolean): LaterHold[] {
  if (otherLathe) return [];
  const stages = [...new Set(ordered.map((task) => task.stage))];
  let from = 0;
  return roundsOf(ordered)
    .slice(1)
    .map(({ tasks }, at) => {
      from = opened(tasks, stages, from);
      return {
        id: `hold-make-first-${at + 2}`,
        name: `Hold point A, round ${at + 2}`,
        say: LATER_ROUND,
        tasks: tasks.filter(isCut).map((task) => task.id),
        opens: stages[from]!,
      };
    })
    .filter((hold) => hold.tasks.length > 0);
}
