import type { State } from '../choices/state.ts';
import type { Progress } from '../core/progress.ts';
import type { Column } from '../cost/edition.ts';
import { spreadOf } from '../cost/spread.ts';
import { BUILDS } from '../cost/strata.ts';
import type { Spread } from '../report.ts';
import { laterHolds } from './later-holds.ts';
import { hasOtherLathe, planOf } from './plan.ts';
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

/** The hold points of a plan as they stand. */
export function holdsOf(state: State, progress: Progress): HoldStand[] {
  const { stages } = planOf(state);
  const planned = stages.flatMap(({ hold }) => (hold ? [hold] : []));
  const ordered = stages.flatMap((stage) => stage.tasks);
  const later = laterHolds(ordered, hasOtherLathe(state));
  return [...planned, ...later].map(({ id, name, say, tasks }) => {
    const open = tasks.filter((task) => !(task in progress.done));
    return { id, name, say, tasks, open, passed: open.length === 0 };
  });
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
