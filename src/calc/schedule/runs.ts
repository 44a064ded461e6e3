import type { State } from '../choices/state.ts';
import { figure, type Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import { nothingDone, type Progress } from '../core/progress.ts';
import { fillTotals, newTotals, resolve } from '../cost/builds.ts';
import type { Column, Edition } from '../cost/edition.ts';
import type { Orders } from '../cost/orders.ts';
import { everyBuild, type Stretch, type TaskWork, taskWork, troubleOf } from './hours.ts';
import { leadsOf } from './leads.ts';
import { type MoneyColumns, moneyColumns } from './money.ts';
import { type Network, networkOf } from './network.ts';
import { newRun, type Run, type Workable, work, workable } from './worker.ts';

/** One set of choices laid out for working: who waits for what, how long it takes and what it costs in every build. */
export interface Prepared {
  readonly network: Network;
  readonly plan: Workable;
  readonly work: TaskWork;
  readonly leads: () => readonly Column[];
  /** Worked out when first asked for: what is next costs nothing. */
  readonly money: () => MoneyColumns;
  readonly hoursAWeek: number;
  /** The builds that stand on it; the columns are zero elsewhere. */
  readonly builds: Stretch;
}

/** Made at first use and kept. */
function kept<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

export function prepare(
  state: State,
  machine: Machine,
  path: Path,
  edition: Edition,
  orders: Orders,
  progress: Progress = nothingDone,
  builds: Stretch = everyBuild,
): Prepared {
  const network = networkOf(state, path, edition.book);
  const way = resolve(state, machine, path, edition, orders);
  const trouble = troubleOf(network.tasks, way, edition, builds);
  return {
    network,
    plan: workable(network),
    work: taskWork(network.tasks, state, edition, trouble, progress, builds),
    leads: kept(() => network.deliveries.map(({ part }) => leadsOf(edition.book, part))),
    money: kept(() => {
      const totals = newTotals();
      fillTotals(totals, way, edition, builds.from, builds.to);
      return moneyColumns(network, { state, path, edition, orders, totals }, trouble, builds);
    }),
    hoursAWeek: figure(machine, 'hours-per-week'),
    builds,
  };
}

/** Works the plan in each of its builds, one after the other, and hands each run over; the run is used again. */
export function eachRun(
  { network, plan, work: { left }, leads, hoursAWeek, builds }: Prepared,
  see: (run: Run, build: number) => void,
): void {
  const run = newRun(network);
  const lead = leads();
  const weeks = new Float64Array(network.tasks.length);
  const days = new Float64Array(network.deliveries.length);
  for (let build = builds.from; build < builds.to; build += 1) {
    for (let at = 0; at < weeks.length; at += 1) weeks[at] = left[at]![build]! / hoursAWeek;
    for (let at = 0; at < days.length; at += 1) days[at] = lead[at]![build]!;
    work(plan, weeks, days, run);
    see(run, build);
  }
}

/** A stretch of weeks. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * When the lathe cannot be used: in each stage from the start of the first task that takes it out of use to the end of
 * the last, whatever is done or waited for between. Overlapping stretches made one.
 */
export function spansOut({ tasks }: Network, { start, finish }: Pick<Run, 'start' | 'finish'>): Span[] {
  const byStage = new Map<string, { from: number; to: number }>();
  for (let at = 0; at < tasks.length; at += 1) {
    const { lathe, stage } = tasks[at]!;
    if (lathe !== 'out' || finish[at]! <= start[at]!) continue;
    const known = byStage.get(stage);
    byStage.set(stage, {
      from: Math.min(known?.from ?? start[at]!, start[at]!),
      to: Math.max(known?.to ?? finish[at]!, finish[at]!),
    });
  }
  const spans = [...byStage.values()].sort((a, b) => a.from - b.from);
  const merged: { from: number; to: number }[] = [];
  for (const span of spans) {
    const last = merged.at(-1);
    if (last && span.from <= last.to) last.to = Math.max(last.to, span.to);
    else merged.push({ ...span });
  }
  return merged;
}

export const lengthOf = (spans: readonly Span[]): number =>
  spans.reduce((sum, span) => sum + span.to - span.from, 0);
