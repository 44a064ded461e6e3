import type { State } from '../choices/state.ts';
import { nothingDone, type Progress } from '../core/progress.ts';
import type { StageId } from '../core/task.ts';
import type { Resolved } from '../cost/builds.ts';
import { addTerms } from '../cost/columns.ts';
import type { Column, Edition } from '../cost/edition.ts';
import { BUILDS } from '../cost/strata.ts';
import type { PlannedTask } from '../report.ts';
import { risks } from '../trade.ts';
import { stageNames } from './stages.ts';
import { termsOfTask } from './work.ts';

const HUNDREDTHS = 100;

/** Hours and cents of trouble that each stage meets, build by build. */
export interface Trouble {
  readonly hours: ReadonlyMap<StageId, Column>;
  readonly cents: ReadonlyMap<StageId, Column>;
}

/** Builds from one to before another: all of them, or those of one way of answering. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export const everyBuild: Stretch = { from: 0, to: BUILDS };

/** Trouble of a stage that this plan has no task in strikes in the next one that it has. */
function homeOf(tasks: readonly PlannedTask[]): ReadonlyMap<StageId, StageId> {
  const present = new Set(tasks.map((task) => task.stage));
  const last = stageNames.findLast(({ id }) => present.has(id))!.id;
  return new Map(
    stageNames.map(({ id }, at) => [
      id,
      stageNames.slice(at).find((each) => present.has(each.id))?.id ?? last,
    ]),
  );
}

export function troubleOf(
  tasks: readonly PlannedTask[],
  way: Pick<Resolved, 'risks'>,
  edition: Edition,
  { from, to }: Stretch = everyBuild,
): Trouble {
  const home = homeOf(tasks);
  const empty = (): Map<StageId, Column> =>
    new Map([...new Set(home.values())].map((stage) => [stage, new Float64Array(BUILDS)]));
  const [hours, cents] = [empty(), empty()];
  for (const { at, builds, spared } of way.risks) {
    const stage = home.get(risks[at]!.stage)!;
    const struck = edition.risks[at]!;
    for (let build = from; build < to; build += 1) {
      const place = struck.rank[build]!;
      if (place >= builds) continue;
      hours.get(stage)![build]! += struck.hours[place]! / HUNDREDTHS;
      if (!spared) cents.get(stage)![build]! += struck.money[place]!;
    }
  }
  return { hours, cents };
}

/** Hours of each task in each build, and of those the ones that are still to be worked. */
export interface TaskWork {
  readonly all: readonly Column[];
  readonly left: readonly Column[];
}

/** Stages whose last task is ticked: what could go wrong there has gone wrong or not. */
export const finishedStages = (tasks: readonly PlannedTask[], progress: Progress): Set<StageId> => {
  const open = new Set(tasks.filter((task) => !(task.id in progress.done)).map((task) => task.stage));
  return new Set(tasks.map((task) => task.stage).filter((stage) => !open.has(stage)));
};

function ownHours(id: string, state: State, edition: Edition, { from, to }: Stretch): Column {
  const column = new Float64Array(BUILDS);
  addTerms(column, termsOfTask(id, state, edition), from, to);
  for (let build = from; build < to; build += 1) column[build]! /= HUNDREDTHS;
  return column;
}

/** Each task carries its share of the trouble of its stage, by its own hours. */
function addTrouble(
  tasks: readonly PlannedTask[],
  own: readonly Column[],
  trouble: Trouble,
  { from, to }: Stretch,
): Column[] {
  const inStage = new Map<StageId, Column>(
    [...trouble.hours.keys()].map((stage) => [stage, new Float64Array(BUILDS)]),
  );
  for (const [at, { stage }] of tasks.entries()) {
    const sum = inStage.get(stage)!;
    for (let build = from; build < to; build += 1) sum[build]! += own[at]![build]!;
  }
  return own.map((column, at) => {
    const { stage } = tasks[at]!;
    const [met, sum] = [trouble.hours.get(stage)!, inStage.get(stage)!];
    const hours = new Float64Array(BUILDS);
    for (let build = from; build < to; build += 1)
      hours[build] = column[build]! * (1 + met[build]! / (sum[build]! || 1));
    return hours;
  });
}

/**
 * Hours of every task in every build, trouble shared out. What is ticked takes the hours that were written down, with no
 * spread; where none were, the estimate stands. A task under way takes at least what is spent already.
 */
export function taskWork(
  tasks: readonly PlannedTask[],
  state: State,
  edition: Edition,
  trouble: Trouble,
  progress: Progress = nothingDone,
  builds: Stretch = everyBuild,
): TaskWork {
  const over = finishedStages(tasks, progress);
  const ahead: Trouble = {
    ...trouble,
    hours: new Map(
      [...trouble.hours].map(([stage, met]) => [stage, over.has(stage) ? new Float64Array(BUILDS) : met]),
    ),
  };
  const own = tasks.map(({ id }) => ownHours(id, state, edition, builds));
  const estimated = addTrouble(tasks, own, ahead, builds);
  const pairs = estimated.map((column, at) => {
    const { id } = tasks[at]!;
    const spent = progress.spent[id];
    if (id in progress.done) {
      const all = spent === undefined ? column : new Float64Array(BUILDS).fill(spent);
      return { all, left: new Float64Array(BUILDS) };
    }
    if (spent === undefined) return { all: column, left: column };
    return {
      all: column.map((hours) => Math.max(hours, spent)),
      left: column.map((hours) => Math.max(hours - spent, 0)),
    };
  });
  return { all: pairs.map(({ all }) => all), left: pairs.map(({ left }) => left) };
}
