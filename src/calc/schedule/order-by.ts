import type { Band } from '../core/band.ts';
import type { SubsystemId } from '../core/decision.ts';
import type { Part } from '../core/part.ts';
import type { StageId } from '../core/task.ts';
import type { OrderBy, StagePlan } from '../report.ts';

const DAYS_IN_WEEK = 7;
const DAY = 86_400_000;

/** Where the parts of a room are needed first, unless a part says otherwise. */
const usualStage: Readonly<Record<SubsystemId, StageId>> = {
  purpose: 'decide',
  approach: 'make-first',
  carriage: 'carriage-stage',
  'cross-slide': 'cross-stage',
  tooling: 'commission',
  motors: 'bench-electrics',
  control: 'bench-electrics',
  spindle: 'spindle-stage',
  wiring: 'bench-electrics',
};

/** Stages in order, with the day after the start on which each begins at so many hours a week. */
export interface Calendar {
  readonly stages: readonly { readonly id: StageId; readonly number: number; readonly day: number }[];
  readonly start?: string;
}

/** The likely hours of the tasks, laid one after the other at the owner's hours a week; waiting is not in it. */
export function calendarOf(stages: readonly StagePlan[], hoursPerWeek: number, start?: string): Calendar {
  let hours = 0;
  const days = stages.map((stage) => {
    const day = Math.floor((hours / hoursPerWeek) * DAYS_IN_WEEK);
    hours += stage.hours[1];
    return { id: stage.id, number: stage.number, day };
  });
  return { stages: days, ...(start !== undefined && isDay(start) ? { start } : {}) };
}

/** The stage that needs a part first: the one it names or the usual one of its room, or the next after it that the plan has. */
export function stageOf(part: Part, order: readonly StageId[], { stages }: Calendar): StageId {
  const wanted = part.stage ?? usualStage[part.subsystem];
  const from = order.indexOf(wanted);
  const found = stages.find(({ id }) => order.indexOf(id) >= from) ?? stages.at(-1);
  return found?.id ?? wanted;
}

/** When to order: first day of the stage less the likely and less the slow lead time, rounded to the earlier day. */
export function orderByOf(stage: StageId, [, likely, slow]: Band, { stages, start }: Calendar): OrderBy {
  const neededAt = stages.find(({ id }) => id === stage)?.day ?? 0;
  const days = { neededAt, likely: Math.floor(neededAt - likely), slow: Math.floor(neededAt - slow) };
  if (start === undefined) return days;
  const dates = {
    neededAt: dayAfter(start, days.neededAt),
    likely: dayAfter(start, days.likely),
    slow: dayAfter(start, days.slow),
  };
  return { ...days, dates };
}

/** Midnight UTC of an ISO day, milliseconds; NaN where it is no day of the calendar. */
function millis(day: string): number {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day)) return Number.NaN;
  const at = Date.parse(`${day}T00:00:00Z`);
  return Number.isFinite(at) && new Date(at).toISOString().startsWith(day) ? at : Number.NaN;
}

export const isDay = (text: string): boolean => Number.isFinite(millis(text));

/** The ISO day so many days after another; days of 24 hours, no clock and no time zone. */
export const dayAfter = (day: string, days: number): string =>
  new Date(millis(day) + days * DAY).toISOString().slice(0, 10);
