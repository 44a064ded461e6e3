import type { Range } from '../core/range.ts';
import type { Column } from '../cost/edition.ts';
import { BUILDS } from '../cost/strata.ts';
import { dayAtWeek } from './dates.ts';
import { rangeOf } from './ranges.ts';
import { eachRun, type Prepared } from './runs.ts';
import { newRun, work } from './worker.ts';

/** Weeks from the start, and the typical days where a start is given. */
export interface When {
  readonly start: Range;
  readonly finish: Range;
  readonly days?: { readonly from: string; readonly to: string };
}

/** When everything of one plan happens, weeks, column by column. */
export interface Watched {
  readonly start: readonly Column[];
  readonly finish: readonly Column[];
  readonly ordered: readonly Column[];
  readonly arrives: readonly Column[];
  readonly weeks: Column;
  /** Weeks of one run in which everything takes its mean time. */
  readonly weeksAtMeans: number;
  readonly when: (start: Column, finish: Column, firstDay: string | undefined) => When;
}

const mean = (column: Column): number => column.reduce((sum, value) => sum + value, 0) / column.length;
const latest = (finish: Float64Array): number => finish.reduce((a, b) => Math.max(a, b), 0);

function runAtMeans({ network, plan, work: { left }, leads, hoursAWeek }: Prepared): number {
  const run = newRun(network);
  const weeks = Float64Array.from(left, (column) => mean(column) / hoursAWeek);
  work(plan, weeks, Float64Array.from(leads(), mean), run);
  return latest(run.finish);
}

/** Works one plan in all builds and keeps when each task and each delivery comes. */
export function watchTasks(prepared: Prepared): Watched {
  const columns = (count: number): Column[] => Array.from({ length: count }, () => new Float64Array(BUILDS));
  const { tasks, deliveries } = prepared.network;
  const [start, finish] = [columns(tasks.length), columns(tasks.length)];
  const [ordered, arrives] = [columns(deliveries.length), columns(deliveries.length)];
  const weeks = new Float64Array(BUILDS);
  eachRun(prepared, (run, build) => {
    weeks[build] = latest(run.finish);
    for (let at = 0; at < start.length; at += 1) {
      start[at]![build] = run.start[at]!;
      finish[at]![build] = run.finish[at]!;
    }
    for (let at = 0; at < ordered.length; at += 1) {
      ordered[at]![build] = run.ordered[at]!;
      arrives[at]![build] = run.arrives[at]!;
    }
  });
  return { start, finish, ordered, arrives, weeks, weeksAtMeans: runAtMeans(prepared), when: whenOf };
}

/** Ranges of weeks, and typical days where there is a first one. */
function whenOf(start: Column, finish: Column, firstDay: string | undefined): When {
  const range = { start: rangeOf(start), finish: rangeOf(finish) };
  if (firstDay === undefined) return range;
  const days = { from: dayAtWeek(firstDay, range.start.p50), to: dayAtWeek(firstDay, range.finish.p50) };
  return { ...range, days };
}
