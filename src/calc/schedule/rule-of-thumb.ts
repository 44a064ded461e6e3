import type { Report } from '../report.ts';
import type { Calendar } from './calendar.ts';

/** The trade counts on seven tenths of the hours, because a third of the sessions goes on shopping, waiting and undoing. */
const USEFUL_SHARE = 0.7;
/** And on four weeks of waiting (two to six) that no work fills. Common practice, no source. */
const WAITING_WEEKS = 4;

/** Our calendar beside the trade's rule of thumb, with the terms that make the difference; weeks. Plain data. */
export interface RuleOfThumb {
  readonly rule: number;
  /** Mean of the builds. */
  readonly ours: number;
  /** The likely hours of the plan at the weekly hours: in both. */
  readonly likely: number;
  /** What the rule adds for lost sessions. */
  readonly lostSessions: number;
  /** What we count instead: estimates that lean to the long side, and troubles. */
  readonly leaning: number;
  readonly trouble: number;
  /** Waiting in the rule, and on average in the builds. */
  readonly waitingInRule: number;
  readonly waitingInBuilds: number;
}

/** Likely hours of the plan over seven tenths of the weekly hours, plus four weeks; and where ours differs. */
export function ruleOfThumb(report: Report, calendar: Calendar): RuleOfThumb {
  const { hoursAWeek } = calendar;
  const likely = report.hours.planned[1] / hoursAWeek;
  const work = report.hours.mean / hoursAWeek;
  const trouble = report.hours.meanTrouble / hoursAWeek;
  return {
    rule: likely / USEFUL_SHARE + WAITING_WEEKS,
    ours: calendar.weeks.mean,
    likely,
    lostSessions: likely / USEFUL_SHARE - likely,
    leaning: work - trouble - likely,
    trouble,
    waitingInRule: WAITING_WEEKS,
    waitingInBuilds: calendar.weeks.mean - work,
  };
}
