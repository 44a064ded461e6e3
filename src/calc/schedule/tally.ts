import type { StageId } from '../core/task.ts';
import type { Column } from '../cost/edition.ts';
import { BUILDS } from '../cost/strata.ts';
import { WEEKS_A_MONTH } from './dates.ts';
import { eachRun, lengthOf, type Prepared, spansOut } from './runs.ts';
import { stageNames } from './stages.ts';
import type { Run } from './worker.ts';

/** Where money stands that was spent on what the plan of today does not ask for. */
export const BESIDE_THE_PLAN: StageId = 'design-and-order';
/** Longest plan that the table of months holds; what falls later counts in its last month. */
const MONTHS = 120;

/** What every build comes to: weeks, and hours and cents by stage and by month of the calendar. */
export interface Tally {
  readonly weeks: Column;
  readonly weeksOut: Column;
  /** Weeks in which everything waits for a parcel. */
  readonly weeksIdle: Column;
  readonly stageHours: ReadonlyMap<StageId, Column>;
  readonly stageCents: ReadonlyMap<StageId, Column>;
  /** Cents paid in each month, by number from zero. */
  readonly monthCents: readonly Column[];
}

const column = (): Column => new Float64Array(BUILDS);
const byStage = (): Map<StageId, Column> => new Map(stageNames.map(({ id }) => [id, column()]));

/** The stage that a delivery belongs to: that of the first task that needs it. */
export const stageOfDelivery = ({ network }: Prepared, number: number): StageId =>
  network.tasks[network.deliveries[number]!.needers[0]!]!.stage;

const latest = (finish: Float64Array): number => finish.reduce((a, b) => Math.max(a, b), 0);

const monthOf = (week: number): number => Math.min(MONTHS - 1, Math.floor(week / WEEKS_A_MONTH));

/** Money taken back comes when the part has been taken off and packed, everything else is paid with the order. */
const paidAt = ({ network }: Prepared, run: Run, number: number, cents: number): number =>
  cents < 0 ? run.finish[network.deliveries[number]!.needers[0]!]! : run.ordered[number]!;

function addMoney(tally: Tally, prepared: Prepared, run: Run, build: number): void {
  const { network } = prepared;
  const money = prepared.money();
  for (const [number, cents] of money.deliveries.entries()) {
    const paid = cents[build]!;
    tally.stageCents.get(stageOfDelivery(prepared, number))![build]! += paid;
    tally.monthCents[monthOf(paidAt(prepared, run, number, paid))]![build]! += paid;
  }
  tally.stageCents.get(BESIDE_THE_PLAN)![build]! += money.loose[build]!;
  tally.monthCents[0]![build]! += money.loose[build]!;
  const ends = new Map<StageId, number>();
  for (const [at, { stage }] of network.tasks.entries())
    ends.set(stage, Math.max(ends.get(stage) ?? 0, run.finish[at]!));
  for (const [stage, cents] of money.trouble) {
    tally.stageCents.get(stage)![build]! += cents[build]!;
    tally.monthCents[monthOf(ends.get(stage)!)]![build]! += cents[build]!;
  }
}

function addTime(tally: Tally, { network, work }: Prepared, run: Run, build: number): void {
  tally.weeks[build] = latest(run.finish);
  tally.weeksOut[build] = lengthOf(spansOut(network, run));
  let busy = 0;
  for (let at = 0; at < network.tasks.length; at += 1) {
    busy += run.finish[at]! - run.start[at]!;
    tally.stageHours.get(network.tasks[at]!.stage)![build]! += work.all[at]![build]!;
  }
  tally.weeksIdle[build] = tally.weeks[build]! - busy;
}

/** Works every build on its way of answering and adds everything up. */
export function tallyOf(ways: readonly Prepared[]): Tally {
  const tally: Tally = {
    weeks: column(),
    weeksOut: column(),
    weeksIdle: column(),
    stageHours: byStage(),
    stageCents: byStage(),
    monthCents: Array.from({ length: MONTHS }, column),
  };
  for (const prepared of ways) {
    eachRun(prepared, (run, build) => {
      addTime(tally, prepared, run, build);
      addMoney(tally, prepared, run, build);
    });
  }
  return tally;
}
