import { addBands, type Band, NOTHING } from '../core/band.ts';
import type { Range } from '../core/range.ts';
import type { StageId } from '../core/task.ts';
import type { Column } from '../cost/edition.ts';
import { BUILDS } from '../cost/strata.ts';
import type { PlannedTask } from '../report.ts';
import { planOf } from './plan.ts';
import type { PreparedPath } from './prepared-ways.ts';
import { rangeOf } from './ranges.ts';
import { resaleOf } from './resale.ts';
import { roundsOf, withAncestors } from './rounds.ts';
import { eachRun, type Prepared } from './runs.ts';
import { stageNames } from './stages.ts';
import type { Run } from './worker.ts';

const CENTS = 100;
const FIRST_ON_MACHINE = stageNames.findIndex(({ id }) => id === 'carriage-stage');

/** A place to stop, with what has been put in by then. Plain data. */
export interface StopPlan {
  readonly id: string;
  readonly after: StageId;
  /** "You may stop here and have …" */
  readonly say: string;
  /** Tasks that lead here. */
  readonly tasks: readonly string[];
  /** Dollars with freight, tax, duty and trouble, for what has been needed so far. */
  readonly money: Range;
  /** Dollars that the plan has ordered by then, needed or not. */
  readonly ordered: Range;
  readonly hours: Range;
  /** Weeks from the start. */
  readonly weeks: Range;
  /** Dollars that selling the parts again would bring: those still on the shelf, and those built in. */
  readonly resale: Band;
}

const stageAt = (stage: StageId): number => stageNames.findIndex(({ id }) => id === stage);

/**
 * The tasks that lead to a stop, with whatever they wait for: the first round of a staged job up to that stage, or the
 * whole of a job that is done at once; beyond the carriage also later rounds, as far as the work on the machine needs them.
 */
function leadingTo(after: StageId, ordered: readonly PlannedTask[]): Set<string> {
  const stop = stageAt(after);
  const first = new Set(roundsOf(ordered)[0]!.tasks.map((task) => task.id));
  const counts = ({ id, stage }: PlannedTask): boolean =>
    stop === stageNames.length - 1 ||
    (stageAt(stage) <= stop &&
      (first.has(id) || (stop > FIRST_ON_MACHINE && stageAt(stage) >= FIRST_ON_MACHINE)));
  const before = new Map(ordered.map((task) => [task.id, task.after]));
  return withAncestors(
    ordered.filter(counts).map((task) => task.id),
    before,
  );
}

interface StopColumns {
  readonly money: Column;
  readonly ordered: Column;
  readonly hours: Column;
  readonly weeks: Column;
}

const newColumns = (): StopColumns => ({
  money: new Float64Array(BUILDS),
  ordered: new Float64Array(BUILDS),
  hours: new Float64Array(BUILDS),
  weeks: new Float64Array(BUILDS),
});

/** One stop in one way of answering: which tasks lead to it, and which deliveries they need. */
interface Reached {
  readonly tasks: readonly boolean[];
  readonly deliveries: readonly boolean[];
}

function reachedAt({ network }: Prepared, after: StageId): Reached {
  const leading = leadingTo(after, network.tasks);
  const tasks = network.tasks.map(({ id }) => leading.has(id));
  return { tasks, deliveries: network.deliveries.map(({ needers }) => needers.some((at) => tasks[at])) };
}

/** Cents of trouble up to a stop: of each stage the share of its hours that lie before it. */
function troubleBy({ network, work, money }: Prepared, { tasks }: Reached, build: number): number {
  const all = new Float64Array(stageNames.length);
  const here = new Float64Array(stageNames.length);
  for (let at = 0; at < tasks.length; at += 1) {
    const stage = stageAt(network.tasks[at]!.stage);
    const hours = work.all[at]![build]!;
    all[stage]! += hours;
    if (tasks[at]) here[stage]! += hours;
  }
  let cents = 0;
  for (const [stage, column] of money().trouble) {
    const at = stageAt(stage);
    cents += (column[build]! * here[at]!) / (all[at]! || 1);
  }
  return cents;
}

/** Adds one build up at one stop. */
function fill(columns: StopColumns, prepared: Prepared, reached: Reached, run: Run, build: number): void {
  const { work } = prepared;
  const money = prepared.money();
  let [hours, weeks, cents, ordered] = [0, 0, 0, 0];
  for (let at = 0; at < reached.tasks.length; at += 1) {
    if (!reached.tasks[at]) continue;
    hours += work.all[at]![build]!;
    weeks = Math.max(weeks, run.finish[at]!);
  }
  for (let number = 0; number < reached.deliveries.length; number += 1) {
    const paid = money.deliveries[number]![build]!;
    if (reached.deliveries[number]) cents += paid;
    if (reached.deliveries[number] || run.ordered[number]! <= weeks) ordered += paid;
  }
  const met = troubleBy(prepared, reached, build) + money.loose[build]!;
  columns.money[build] = cents + met;
  columns.ordered[build] = ordered + met;
  columns.hours[build] = hours;
  columns.weeks[build] = weeks;
}

/** What the lines needed by a stop bring when they are sold again, dollars. */
function resaleAt({ own, lines: bill }: PreparedPath, leading: ReadonlySet<string>): Band {
  const { tasks, deliveries } = own.network;
  const lines = new Map(bill.map((line) => [line.part, line.line] as const));
  return deliveries.reduce((sum, { part, needers }) => {
    const stages = needers.filter((at) => leading.has(tasks[at]!.id)).map((at) => stageAt(tasks[at]!.stage));
    if (stages.length === 0) return sum;
    const builtIn = Math.max(...stages) >= FIRST_ON_MACHINE;
    return addBands(sum, resaleOf(part, lines.get(part) ?? NOTHING, builtIn));
  }, NOTHING);
}

/** Where a path may stop, with money, hours and weeks so far in the builds. */
export function stopsOf(ready: PreparedPath): StopPlan[] {
  const stops = planOf(ready.state).stages.flatMap((stage) => (stage.stop ? [stage.stop] : []));
  const columns = stops.map(newColumns);
  for (const prepared of ready.ways) {
    const reached = stops.map(({ after }) => reachedAt(prepared, after));
    eachRun(prepared, (run, build) => {
      for (let at = 0; at < stops.length; at += 1) fill(columns[at]!, prepared, reached[at]!, run, build);
    });
  }
  return stops.map(({ id, after, say }, at) => {
    const leading = leadingTo(after, ready.own.network.tasks);
    const { money, ordered, hours, weeks } = columns[at]!;
    return {
      id,
      after,
      say,
      tasks: ready.own.network.tasks.filter((task) => leading.has(task.id)).map((task) => task.id),
      money: rangeOf(money, CENTS),
      ordered: rangeOf(ordered, CENTS),
      hours: rangeOf(hours),
      weeks: rangeOf(weeks),
      resale: resaleAt(ready, leading),
    };
  });
}
