import { addBands, type Band, NOTHING } from '../core/band.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Range } from '../core/range.ts';
import type { StageId } from '../core/task.ts';
import type { Column } from '../cost/edition.ts';
import { editionOf } from '../cost/edition.ts';
import { billLines } from '../cost/lines.ts';
import { BUILDS } from '../cost/strata.ts';
import { planState, waysOf } from '../cost/ways.ts';
import { machineOf } from '../facts.ts';
import type { PlannedTask } from '../report.ts';
import { planOf } from './plan.ts';
import { rangeOf } from './ranges.ts';
import { resaleOf } from './resale.ts';
import { roundsOf, withAncestors } from './rounds.ts';
import { eachRun, type Prepared, prepare } from './runs.ts';
import { stageNames } from './stages.ts';

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
 * The tasks that lead to a stop. Before the lathe is touched: everything up to that stage. Afterwards: the work on the
 * machine up to it with whatever that waits for. Up to the carriage only what the first round of a staged job holds.
 */
function leadingTo(after: StageId, ordered: readonly PlannedTask[]): Set<string> {
  const stop = stageAt(after);
  const first = new Set(roundsOf(ordered)[0]!.tasks.map((task) => task.id));
  const counts = (task: PlannedTask): boolean => {
    const stage = stageAt(task.stage);
    const inRange = stage <= stop && (stop < FIRST_ON_MACHINE || stage >= FIRST_ON_MACHINE);
    return inRange && (stop > FIRST_ON_MACHINE || first.has(task.id));
  };
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

/** How much of each stage lies before the stop, by its hours in one build; trouble is shared out the same way. */
function shareOfStage(
  { network, work }: Prepared,
  reached: readonly boolean[],
  build: number,
): (stage: StageId) => number {
  const all = new Map<StageId, number>();
  const here = new Map<StageId, number>();
  for (const [at, { stage }] of network.tasks.entries()) {
    const hours = work.all[at]![build]!;
    all.set(stage, (all.get(stage) ?? 0) + hours);
    if (reached[at]) here.set(stage, (here.get(stage) ?? 0) + hours);
  }
  return (stage) => (here.get(stage) ?? 0) / (all.get(stage) || 1);
}

/** Adds up one way of answering at one stop. */
function fill(columns: StopColumns, prepared: Prepared, after: StageId, from: number, to: number): void {
  const { network, work, money } = prepared;
  const leading = leadingTo(after, network.tasks);
  const reached = network.tasks.map(({ id }) => leading.has(id));
  const needed = network.deliveries.map(({ needers }) => needers.some((at) => reached[at]));
  eachRun(
    prepared,
    (run, build) => {
      let [hours, weeks, cents, ordered] = [0, 0, 0, 0];
      for (let at = 0; at < reached.length; at += 1) {
        if (!reached[at]) continue;
        hours += work.all[at]![build]!;
        weeks = Math.max(weeks, run.finish[at]!);
      }
      for (let number = 0; number < needed.length; number += 1) {
        const paid = money.deliveries[number]![build]!;
        if (needed[number]) cents += paid;
        if (needed[number] || run.ordered[number]! <= weeks) ordered += paid;
      }
      const share = shareOfStage(prepared, reached, build);
      let met = 0;
      for (const [stage, column] of money.trouble) met += column[build]! * share(stage);
      columns.money[build] = cents + met;
      columns.ordered[build] = ordered + met;
      columns.hours[build] = hours;
      columns.weeks[build] = weeks;
    },
    from,
    to,
  );
}

/** What the lines bought by a stop bring when they are sold again. */
function resaleAt(
  path: Path,
  book: PriceBook,
  prepared: Prepared,
  state: Parameters<typeof billLines>[0],
  leading: ReadonlySet<string>,
): Band {
  const lines = new Map(billLines(state, state.machine, path, book).map((line) => [line.part, line.line]));
  return prepared.network.deliveries.reduce((sum, { part, needers }) => {
    const stages = needers.filter((at) => leading.has(prepared.network.tasks[at]!.id));
    if (stages.length === 0) return sum;
    const builtIn = stages.some((at) => stageAt(prepared.network.tasks[at]!.stage) >= FIRST_ON_MACHINE);
    return addBands(sum, resaleOf(part, lines.get(part) ?? NOTHING, builtIn));
  }, NOTHING);
}

/** Where a path may stop, with money, hours and weeks so far in the builds. Worked out when somebody asks. */
export function stopsOf(path: Path, book: PriceBook): StopPlan[] {
  const machine = machineOf(path.size, path.facts);
  const edition = editionOf(book);
  const plan = planState(path, machine);
  const ways = waysOf(path, plan, book.seed).map(({ state, from, to }) => ({
    prepared: prepare(state, machine, path, edition),
    from,
    to,
  }));
  const own = prepare(plan.state, machine, path, edition);
  const stops = planOf(plan.state).stages.flatMap((stage) => (stage.stop ? [stage.stop] : []));
  return stops.map(({ id, after, say }) => {
    const columns = newColumns();
    for (const { prepared, from, to } of ways) fill(columns, prepared, after, from, to);
    const leading = leadingTo(after, own.network.tasks);
    return {
      id,
      after,
      say,
      tasks: own.network.tasks.filter((task) => leading.has(task.id)).map((task) => task.id),
      money: rangeOf(columns.money, CENTS),
      ordered: rangeOf(columns.ordered, CENTS),
      hours: rangeOf(columns.hours),
      weeks: rangeOf(columns.weeks),
      resale: resaleAt(path, book, own, plan.state, leading),
    };
  });
}
