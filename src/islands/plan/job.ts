import type { Path } from '../../calc/core/path.ts';
import type { Report } from '../../calc/evaluate.ts';
import type { Calendar, StopPlan, Working } from '../../calc/working.ts';
import { useAnswer } from '../ask/use-answer.ts';

/** What is worked out beside the page: each is missing until it comes. */
export interface Job {
  readonly working: Working | undefined;
  readonly calendar: Calendar | undefined;
  readonly stops: readonly StopPlan[] | undefined;
}

/** What every part of the sheet is drawn from. */
export interface Sheet {
  readonly report: Report;
  readonly job: Job;
}

export const useJob = (path: Path): Job => ({
  working: useAnswer('working', path).answer,
  calendar: useAnswer('calendar', path).answer,
  stops: useAnswer('stops', path).answer,
});
