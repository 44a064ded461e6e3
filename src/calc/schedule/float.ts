import { criticalPath } from '../formulas/critical-path.ts';
import type { Prepared } from './runs.ts';

/** How far a task may slip before the end of the plan moves, if helpers took the rest; weeks. */
export interface Float {
  readonly weeks: number;
  /** On the longest chain of work and waiting. */
  readonly critical: boolean;
}

const mean = (column: Float64Array): number => column.reduce((sum, value) => sum + value, 0) / column.length;
/** Rounding of sums of weeks. */
const NOTHING = 1e-9;

/**
 * Longest chain through tasks and deliveries at their mean times. It asks what waits for what, not who does it: with one
 * pair of hands the calendar is longer, and shows what chain there is no way round.
 */
export function floatsOf({ network, work, leads, hoursAWeek }: Prepared): {
  length: number;
  floats: ReadonlyMap<string, Float>;
} {
  const { tasks, before, deliveries, waitsFor } = network;
  const parcel = (number: number): string => `part ${deliveries[number]!.part}`;
  const activities = [
    ...tasks.map(({ id }, at) => ({
      id,
      duration: mean(work.left[at]!) / hoursAWeek,
      after: [...before[at]!.map((first) => tasks[first]!.id), ...waitsFor[at]!.map(parcel)],
    })),
    ...deliveries.map(({ orderedAfter, here }, number) => ({
      id: parcel(number),
      duration: here ? 0 : mean(leads()[number]!),
      after: orderedAfter < 0 ? [] : [tasks[orderedAfter]!.id],
    })),
  ];
  const { length, activities: scheduled } = criticalPath.compute({ activities });
  const floats = scheduled.map(({ id, float }): [string, Float] => [
    id,
    { weeks: Math.max(0, float), critical: float < NOTHING },
  ]);
  return { length, floats: new Map(floats) };
}
