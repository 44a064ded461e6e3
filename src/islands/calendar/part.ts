import type { Report } from '../../calc/evaluate.ts';
import type { Calendar } from '../../calc/working.ts';

/** What each part of the page is drawn from. */
export interface PartProps {
  readonly report: Report;
  readonly calendar: Calendar;
}
