import type { State } from '../choices/state.ts';
import type { Progress } from '../core/progress.ts';
import type { Column } from '../cost/edition.ts';
import { spreadOf } from '../cost/spread.ts';
import { BUILDS } from '../cost/strata.ts';
import type { PlannedTask, Spread } from '../report.ts';
import { hasOtherLathe, planOf } from './plan.ts';
import { roundsOf } from './rounds.ts';
import type { Prepared } from './runs.ts';

/** A hold point and the tasks that keep it shut. Plain data. */
export interface HoldStand {
  readonly id: string;
  readonly name: string;
  readonly say: string;
  readonly tasks: readonly string[];
  /** Those that are not ticked. */
  readonly open: readonly string[];
  readonly passed: boolean;
}

const LATER_ROUND =
  'Nothing that the next stage takes apart still needs this lathe: its parts are made, measured and on the shelf, with a spare of what could be spoilt.';

/** In stages an only lathe has a make-first hold before each of them. */
function laterRounds(state: State, ordered: readonly PlannedTask[]): Omit<HoldStand, 'open' | 'passed'>[] {
  if (hasOtherLathe(state)) return [];
  return roundsOf(ordered)
    .slice(1)
    .map(({ tasks }, at) => ({
      id: `hold-make-first-${at + 2}`,
      name: `Hold point A, round ${at + 2}`,
      say: LATER_ROUND,
      tasks: tasks.filter((task) => task.lathe === 'cutting').map((task) => task.id),
    }))
    .filter(({ tasks }) => tasks.length > 0);
}

/** The hold points of a plan as they stand. */
export function holdsOf(state: State, progress: Progress): HoldStand[] {
  const { stages } = planOf(state);
  const planned = stages.flatMap(({ hold }) => (hold ? [hold] : []));
  const later = laterRounds(
    state,
    stages.flatMap((stage) => stage.tasks),
  );
  return [...planned, ...later].map(({ id, name, say, tasks }) => {
    const open = tasks.filter((task) => !(task in progress.done));
    return { id, name, say, tasks, open, passed: open.length === 0 };
  });
}

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

export function stopWorkOf(tasks: readonly PlannedTask[], progress: Progress): StopWork | undefined {
  const mains = tasks.filter((task) => task.mains).map((task) => task.id);
  const before = mains.find((id) => !(id in progress.done));
  return before === undefined ? undefined : { before, tasks: mains, say: STOP_WORK };
}

/** Hours so far and hours to come. Plain data. */
export interface HoursStand {
  /** Everything written down, tasks that have left the plan with it. */
  readonly spent: number;
  readonly left: Spread;
  /** Hours written down in place of estimates for what is done, with no spread of their own. */
  readonly total: Spread;
}

/** Hours over the builds. What is ticked with its hours is exact; what is ticked without keeps its estimate. */
export function hoursOf(ways: readonly Prepared[], progress: Progress): HoursStand {
  const [left, total]: [Column, Column] = [new Float64Array(BUILDS), new Float64Array(BUILDS)];
  for (const { network, work, builds } of ways) {
    const inPlan = new Set(network.tasks.map((task) => task.id));
    const elsewhere = Object.entries(progress.spent)
      .filter(([id]) => !inPlan.has(id))
      .reduce((sum, [, hours]) => sum + hours, 0);
    for (let build = builds.from; build < builds.to; build += 1) {
      total[build] = elsewhere;
      for (let at = 0; at < network.tasks.length; at += 1) {
        left[build]! += work.left[at]![build]!;
        total[build]! += work.all[at]![build]!;
      }
    }
  }
  const spent = Object.values(progress.spent).reduce((sum, hours) => sum + hours, 0);
  return { spent, left: spreadOf(left, 1), total: spreadOf(total, 1) };
}
