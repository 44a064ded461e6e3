import type { Band } from '../core/band.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Progress } from '../core/progress.ts';
import type { Range } from '../core/range.ts';
import type { LatheState, StageId } from '../core/task.ts';
import { mean, spreadOf } from '../cost/spread.ts';
import type { Spread } from '../report.ts';
import { type DeliveryRow, deliveryRows } from './calendar-deliveries.ts';
import { type MonthRow, monthsOf } from './calendar-months.ts';
import { type StageRow, stageRows } from './calendar-stages.ts';
import { floatsOf } from './float.ts';
import { isDay } from './order-by.ts';
import { preparePath } from './prepared-ways.ts';
import { rangeOf } from './ranges.ts';
import { type Prepared, type Span, spansOut } from './runs.ts';
import { tallyOf } from './tally.ts';
import { type Watched, type When, watchTasks } from './watch.ts';

export interface CalendarTask extends When {
  readonly id: string;
  readonly name: string;
  readonly stage: StageId;
  readonly lathe: LatheState;
  readonly after: readonly string[];
  /** Hours with the troubles of its stage shared out. */
  readonly hours: Range;
  /** Weeks it may slip if others did the rest, and whether it stands on the longest chain. */
  readonly float: number;
  readonly critical: boolean;
  readonly done: boolean;
}

/** The plan on a calendar. Plain data. */
export interface Calendar {
  /** First day, ISO 8601, where the owner gave one that exists. */
  readonly start?: string;
  readonly hoursAWeek: number;
  readonly weeks: Spread;
  /** From the first task that takes the lathe out of use in a stage to the last, with whatever is waited for between. */
  readonly weeksOut: Spread;
  /** Weeks in which everything waits for a parcel. */
  readonly weeksIdle: Range;
  /** Weeks of the longest chain of work and waiting at mean times, with helpers for the rest. */
  readonly longestChain: number;
  /** Mean of the weeks in the builds less the weeks of a single run at mean times: what waiting for the slowest adds. */
  readonly mergeWeeks: number;
  readonly tasks: readonly CalendarTask[];
  readonly deliveries: readonly DeliveryRow[];
  readonly stages: readonly StageRow[];
  readonly months: readonly MonthRow[];
  /** Typical stretches in which the lathe cannot be used. */
  readonly out: readonly Span[];
  /** All lines of the bill that are paid once, dollars before freight; the stages add up to it to the cent. */
  readonly lines: Band;
}

export interface CalendarOptions {
  readonly progress?: Progress;
  /** First day, or today for a job under way: YYYY-MM-DD; the path's own start when missing. What is no day is left out. */
  readonly start?: string;
}

/** The calendar of a path at the prices of a book, worked out when somebody asks. */
export function calendarOf(
  path: Path,
  book: PriceBook,
  { progress, start = path.start }: CalendarOptions = {},
): Calendar {
  const ready = preparePath(path, book, progress);
  const { own } = ready;
  const tally = tallyOf(ready.ways);
  const seen = watchTasks(own);
  const firstDay = start !== undefined && isDay(start) ? start : undefined;
  const { length, floats } = floatsOf(own);
  const stages = stageRows(ready, seen, tally, firstDay);
  return {
    ...(firstDay === undefined ? {} : { start: firstDay }),
    hoursAWeek: own.hoursAWeek,
    weeks: spreadOf(tally.weeks, 1),
    weeksOut: spreadOf(tally.weeksOut, 1),
    weeksIdle: rangeOf(tally.weeksIdle),
    longestChain: length,
    mergeWeeks: mean(seen.weeks) - seen.weeksAtMeans,
    tasks: taskRows(own, seen, floats, progress, firstDay),
    deliveries: deliveryRows(own, seen, book, firstDay),
    stages: stages.rows,
    months: monthsOf(tally),
    out: typicalOut(own, seen),
    lines: stages.lines,
  };
}

/** Stretches out of use between the typical starts and ends of the tasks. */
const typicalOut = ({ network }: Prepared, seen: Watched): Span[] =>
  spansOut(network, {
    start: Float64Array.from(seen.start, (column) => rangeOf(column).p50),
    finish: Float64Array.from(seen.finish, (column) => rangeOf(column).p50),
  });

function taskRows(
  { network, work }: Prepared,
  seen: Watched,
  floats: ReturnType<typeof floatsOf>['floats'],
  progress: Progress | undefined,
  start: string | undefined,
): CalendarTask[] {
  return network.tasks.map(({ id, name, stage, lathe, after }, at) => ({
    id,
    name,
    stage,
    lathe,
    after,
    hours: rangeOf(work.all[at]!),
    ...seen.when(seen.start[at]!, seen.finish[at]!, start),
    float: floats.get(id)!.weeks,
    critical: floats.get(id)!.critical,
    done: progress !== undefined && id in progress.done,
  }));
}
