import type { Path } from '../../calc/core/path.ts';
import {
  type CalendarOptions,
  calendarOf,
  stagedOrAtOnce,
  stoppingPoints,
  workingOf,
} from '../../calc/working.ts';
import { today } from '../buy/day.ts';
import type { WorkedOut } from './answers.ts';
import { bookOf } from './book-of.ts';

const progressOf = ({ progress }: Path): Pick<CalendarOptions, 'progress'> => (progress ? { progress } : {});

/** What is left of a job under way starts today, unless its first day is still to come. */
function firstDayOf({ start, progress }: Path): Pick<CalendarOptions, 'start'> {
  const isUnderWay = progress !== undefined && Object.keys(progress.done).length > 0;
  const now = today();
  return start !== undefined && isUnderWay && start < now ? { start: now } : {};
}

/** Stages, days and what is done. */
export const answers: WorkedOut<'working' | 'calendar' | 'staged' | 'stops'> = {
  working: (path) => workingOf(path, bookOf(path), path.progress),
  calendar: (path) => calendarOf(path, bookOf(path), { ...progressOf(path), ...firstDayOf(path) }),
  staged: (path) => stagedOrAtOnce(path, bookOf(path)),
  stops: (path) => stoppingPoints(path, bookOf(path)),
};
