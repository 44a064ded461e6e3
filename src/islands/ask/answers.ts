import type { Path } from '../../calc/core/path.ts';
import type { PriceBook } from '../../calc/core/price-book.ts';
import {
  type Calendar,
  type CalendarOptions,
  calendarOf,
  type StagedOrAtOnce,
  type StopPlan,
  stagedOrAtOnce,
  stoppingPoints,
  type Working,
  workingOf,
} from '../../calc/working.ts';
import { currentEdition, editionByName } from '../../content/edition.ts';
import { today } from '../buy/day.ts';

/** What takes too long to work out between two frames, by name. */
export interface Answers {
  readonly working: Working;
  readonly calendar: Calendar;
  readonly staged: StagedOrAtOnce;
  readonly stops: readonly StopPlan[];
}

export type AnswerName = keyof Answers;

const bookOf = ({ edition }: Path): PriceBook => editionByName(edition) ?? currentEdition;

const progressOf = ({ progress }: Path): Pick<CalendarOptions, 'progress'> => (progress ? { progress } : {});

/** What is left of a job under way starts today, unless its first day is still to come. */
function firstDayOf({ start, progress }: Path): Pick<CalendarOptions, 'start'> {
  const isUnderWay = progress !== undefined && Object.keys(progress.done).length > 0;
  const now = today();
  return start !== undefined && isUnderWay && start < now ? { start: now } : {};
}

const workedOut: { readonly [Name in AnswerName]: (path: Path) => Answers[Name] } = {
  working: (path) => workingOf(path, bookOf(path), path.progress),
  calendar: (path) => calendarOf(path, bookOf(path), { ...progressOf(path), ...firstDayOf(path) }),
  staged: (path) => stagedOrAtOnce(path, bookOf(path)),
  stops: (path) => stoppingPoints(path, bookOf(path)),
};

/** The answer of that name for a path at the prices it names. Throws only on a mistake of ours. */
export const answerTo = <Name extends AnswerName>(name: Name, path: Path): Answers[Name] =>
  workedOut[name](path);
