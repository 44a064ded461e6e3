import {
  type ChoiceSwing,
  effectsOfQuestion,
  type QuestionEffects,
  type Receipt,
  receiptOf,
  type SideBySide,
  type Swings,
  sideBySide,
  swingsOf,
  widestOpen,
} from '../../calc/choosing.ts';
import {
  type Compared,
  type Comparison,
  comparisonOf,
  type WhyDiffer,
  whyDiffer,
} from '../../calc/comparing.ts';
import type { Path } from '../../calc/core/path.ts';
import type { PriceBook } from '../../calc/core/price-book.ts';
import { evaluate } from '../../calc/evaluate.ts';
import { type DesignFigures, designFigures } from '../../calc/why-number.ts';
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
import { alternatives } from '../../content/alternatives.ts';
import { currentEdition, editionByName } from '../../content/edition.ts';
import { today } from '../buy/day.ts';

/** What takes too long to work out between two frames, by name. */
export interface Answers {
  readonly working: Working;
  readonly calendar: Calendar;
  readonly staged: StagedOrAtOnce;
  readonly stops: readonly StopPlan[];
  readonly 'side-by-side': SideBySide;
  readonly swings: Swings;
  /** Undefined where the question is not asked on the path. */
  readonly effects: QuestionEffects | undefined;
  readonly receipt: Receipt;
  readonly widest: readonly ChoiceSwing[];
  /** The typical sum of the path at today's prices, dollars, whatever edition it names. */
  readonly 'today-money': number;
  readonly comparison: Comparison;
  readonly 'why-differ': WhyDiffer;
  /** Figures of design and lathe, SI; what does not arise on the path is left out. */
  readonly design: DesignFigures;
}

export type AnswerName = keyof Answers;

/** What some answers need to know besides the path: the question, the path before, what it is compared with. */
interface Details {
  readonly effects: string;
  readonly receipt: Path;
  readonly comparison: readonly Compared[];
  readonly 'why-differ': Path;
  readonly design: readonly string[];
}

export type DetailOf<Name extends AnswerName> = Name extends keyof Details ? Details[Name] : undefined;

/** An answer that asks for nothing but the path may leave the detail out. */
export type More<Name extends AnswerName> =
  undefined extends DetailOf<Name> ? [detail?: DetailOf<Name>] : [detail: DetailOf<Name>];

const bookNamed = (edition: string): PriceBook => editionByName(edition) ?? currentEdition;
const bookOf = ({ edition }: Path): PriceBook => bookNamed(edition);

const progressOf = ({ progress }: Path): Pick<CalendarOptions, 'progress'> => (progress ? { progress } : {});

/** What is left of a job under way starts today, unless its first day is still to come. */
function firstDayOf({ start, progress }: Path): Pick<CalendarOptions, 'start'> {
  const isUnderWay = progress !== undefined && Object.keys(progress.done).length > 0;
  const now = today();
  return start !== undefined && isUnderWay && start < now ? { start: now } : {};
}

const workedOut: { readonly [Name in AnswerName]: (path: Path, detail: DetailOf<Name>) => Answers[Name] } = {
  working: (path) => workingOf(path, bookOf(path), path.progress),
  calendar: (path) => calendarOf(path, bookOf(path), { ...progressOf(path), ...firstDayOf(path) }),
  staged: (path) => stagedOrAtOnce(path, bookOf(path)),
  stops: (path) => stoppingPoints(path, bookOf(path)),
  'side-by-side': (path) => sideBySide(path, bookOf(path), alternatives),
  swings: (path) => swingsOf(path, bookOf(path)),
  effects: (path, question) => effectsOfQuestion(path, bookOf(path), question),
  receipt: (path, before) => receiptOf(before, path, bookOf(path), bookOf(before)),
  widest: (path) => widestOpen(path, bookOf(path)),
  'today-money': (path) => evaluate({ ...path, edition: currentEdition.edition }, currentEdition).money.p50,
  comparison: (path, others) => comparisonOf([{ kind: 'path', path }, ...others], bookNamed, alternatives),
  'why-differ': (path, other) => whyDiffer(path, other, bookNamed),
  design: (path, ids) => designFigures(path, ids),
};

/** The answer of that name for a path at the prices it names. Throws only on a mistake of ours. */
export const answerTo = <Name extends AnswerName>(
  name: Name,
  path: Path,
  ...more: More<Name>
): Answers[Name] => workedOut[name](path, more[0] as DetailOf<Name>);
