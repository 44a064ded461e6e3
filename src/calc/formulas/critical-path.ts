import type { Formula } from '../core/formula.ts';

/** One activity of a plan: seconds, and the ids of those that must be over before it starts. */
export interface Activity {
  readonly id: string;
  readonly duration: number;
  readonly after: readonly string[];
}

/** When an activity can and must run, seconds from the start of the plan. `float` is how long it may slip. */
export interface Scheduled {
  readonly id: string;
  readonly earlyStart: number;
  readonly earlyFinish: number;
  readonly lateStart: number;
  readonly lateFinish: number;
  readonly float: number;
}

export interface Schedule {
  /** Seconds; NaN where activities wait for one another in a ring, or for one that is not in the plan. */
  readonly length: number;
  /** In the order given; empty where there is no length. */
  readonly activities: readonly Scheduled[];
}

const NO_SCHEDULE: Schedule = { length: Number.NaN, activities: [] };

/** Activities with every predecessor before them; undefined for a ring or a missing predecessor. */
function inOrder(activities: readonly Activity[]): readonly Activity[] | undefined {
  const placed = new Set<string>();
  const ordered: Activity[] = [];
  let left = activities;
  while (left.length > 0) {
    const ready = left.filter(({ after }) => after.every((id) => placed.has(id)));
    if (ready.length === 0) return undefined;
    ordered.push(...ready);
    for (const { id } of ready) placed.add(id);
    left = left.filter(({ id }) => !placed.has(id));
  }
  return ordered;
}

/** Earliest finish of every activity: its time after the latest finish among those before it. */
function finishes(ordered: readonly Activity[]): ReadonlyMap<string, number> {
  const finish = new Map<string, number>();
  for (const { id, duration, after } of ordered) {
    finish.set(id, Math.max(0, ...after.map((before) => finish.get(before)!)) + duration);
  }
  return finish;
}

/** Latest finish of every activity: the earliest late start among those that follow it, or the end of the plan. */
function deadlines(ordered: readonly Activity[], length: number): ReadonlyMap<string, number> {
  const latest = new Map(ordered.map(({ id }) => [id, length]));
  for (const { id, duration, after } of ordered.toReversed()) {
    const start = latest.get(id)! - duration;
    for (const before of after) latest.set(before, Math.min(latest.get(before)!, start));
  }
  return latest;
}

/** Earliest and latest times of every activity, forward and then backward through the plan. */
export const criticalPath: Formula<{ activities: readonly Activity[] }, Schedule> = {
  id: 'critical-path',
  label: 'Shortest time for the plan, and what may slip',
  equation:
    'early start = latest early finish before it; late finish = earliest late start after it; float = late − early',
  tex: 'ES_j = \\max_i EF_i,\\quad LF_i = \\min_j LS_j,\\quad F = LS - ES',
  inputs: { activities: 's' },
  unit: 's',
  source: { ref: 'Taylor, Introduction to Management Science', at: 'ch. 8, forward and backward pass' },
  valid: {},
  compute: ({ activities }) => {
    const ordered = inOrder(activities);
    if (ordered === undefined) return NO_SCHEDULE;
    const early = finishes(ordered);
    const length = Math.max(0, ...early.values());
    const late = deadlines(ordered, length);
    return { length, activities: activities.map((activity) => placed(activity, early, late)) };
  },
};

function placed(
  { id, duration }: Activity,
  early: ReadonlyMap<string, number>,
  late: ReadonlyMap<string, number>,
): Scheduled {
  const earlyFinish = early.get(id)!;
  const lateFinish = late.get(id)!;
  return {
    id,
    earlyStart: earlyFinish - duration,
    earlyFinish,
    lateStart: lateFinish - duration,
    lateFinish,
    float: lateFinish - earlyFinish,
  };
}
