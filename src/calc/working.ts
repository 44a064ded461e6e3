import type { Path } from './core/path.ts';
import type { PriceBook } from './core/price-book.ts';
import { nothingDone, type Progress } from './core/progress.ts';
import { editionOf } from './cost/edition.ts';
import { riskRows } from './cost/risk-rows.ts';
import { type Contradiction, contradictionsOf } from './schedule/contradictions.ts';
import { type HoldStand, type HoursStand, holdsOf, hoursOf } from './schedule/gates.ts';
import { type MeasuredReading, measuredOf, otherValues } from './schedule/measured.ts';
import { preparePath } from './schedule/prepared-ways.ts';
import { type ShelfLine, shelfIsGate, shelfOf } from './schedule/shelf.ts';
import { standsOf, type TaskStand } from './schedule/stands.ts';
import { type StopWork, stopWorkOf } from './schedule/stop-work.ts';
import { type StopPlan, stopsOf } from './schedule/stops.ts';

export { type Calendar, type CalendarOptions, type CalendarTask, calendarOf } from './schedule/calendar.ts';
export type { DeliveryRow } from './schedule/calendar-deliveries.ts';
export type { MonthRow } from './schedule/calendar-months.ts';
export type { StageRow } from './schedule/calendar-stages.ts';
export type { Contradiction } from './schedule/contradictions.ts';
export { dayAtWeek } from './schedule/dates.ts';
export type { HoldStand, HoursStand } from './schedule/gates.ts';
export type { MeasuredReading } from './schedule/measured.ts';
export { isDay } from './schedule/order-by.ts';
export { type RuleOfThumb, ruleOfThumb } from './schedule/rule-of-thumb.ts';
export type { ShelfLine } from './schedule/shelf.ts';
export { type StagedOrAtOnce, stagedOrAtOnce } from './schedule/staged.ts';
export type { Standing, TaskStand } from './schedule/stands.ts';
export type { StopWork } from './schedule/stop-work.ts';
export type { StopPlan } from './schedule/stops.ts';

/** How a job under way stands. Plain data. */
export interface Working {
  /** What to do now; missing when everything is done, or nothing can be done before something comes. */
  readonly next?: string;
  /** In the order in which one person works them. */
  readonly tasks: readonly TaskStand[];
  readonly holds: readonly HoldStand[];
  readonly stopWork?: StopWork;
  /** The make-first list; a gate where no other lathe can make what was forgotten. */
  readonly shelf: { readonly isGate: boolean; readonly lines: readonly ShelfLine[] };
  readonly readings: readonly MeasuredReading[];
  /** Readings with values that this path no longer asks for: kept. */
  readonly otherReadings: readonly string[];
  readonly contradictions: readonly Contradiction[];
  readonly hours: HoursStand;
}

/**
 * How the job stands: what is next, what is blocked and by what, what was measured against its limit, and what the
 * answers of today do not agree with. Worked out when somebody asks. Same path, book and progress, same result.
 */
export function workingOf(path: Path, book: PriceBook, progress: Progress = nothingDone): Working {
  const ready = preparePath(path, book, progress);
  const { network } = ready.own;
  const order = network.tasks.map((task) => task.id);
  const inPlan = new Set(order);
  const stands = standsOf(network, ready.state, path, progress);
  const next = stands.find((stand) => stand.standing === 'next')?.id;
  const stopWork = stopWorkOf(network.tasks, progress);
  const readings = measuredOf(
    ready.state,
    order,
    riskRows(ready.state, path, editionOf(book), ready.wanted),
    progress,
  );
  return {
    ...(next === undefined ? {} : { next }),
    tasks: stands,
    holds: holdsOf(ready.state, progress),
    ...(stopWork ? { stopWork } : {}),
    shelf: { isGate: shelfIsGate(ready.state), lines: shelfOf(ready.state, inPlan, progress) },
    readings,
    otherReadings: otherValues(readings, progress),
    contradictions: contradictionsOf(network.tasks, progress),
    hours: hoursOf(ready.ways, progress),
  };
}

/** Where a path may stop, with money, hours and weeks so far and what could be sold again. */
export const stoppingPoints = (path: Path, book: PriceBook): StopPlan[] => stopsOf(preparePath(path, book));
