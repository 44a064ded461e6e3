import type { ChoiceSwing, QuestionEffects, Receipt, SideBySide, Swings } from '../../calc/choosing.ts';
import type { Compared, Comparison, WhyDiffer } from '../../calc/comparing.ts';
import type { Path } from '../../calc/core/path.ts';
import type { Report } from '../../calc/evaluate.ts';
import type { DesignFigures } from '../../calc/why-number.ts';
import type { Calendar, StagedOrAtOnce, StopPlan, Working } from '../../calc/working.ts';
import type { WorstBuild } from '../../calc/worst-builds.ts';
import { fetched } from './fetched.ts';

/** What takes too long to work out between two frames, by name. */
export interface Answers {
  readonly report: Report;
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
  /** The twenty ways with what made each what it is, dearest first. */
  readonly dearest: readonly WorstBuild[];
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

/** How the answers of some names are worked out. */
export type WorkedOut<Name extends AnswerName> = {
  readonly [Each in Name]: (path: Path, detail: DetailOf<Each>) => Answers[Each];
};

const aboutAll = () => import('./answers-report.ts');
const aboutTime = () => import('./answers-time.ts');
const aboutChoices = () => import('./answers-choices.ts');
const aboutColumns = () => import('./answers-columns.ts');

/** Where each answer is worked out: a page loads the sums of the answers that it asks for, and no others. */
const places: { readonly [Name in AnswerName]: () => Promise<{ readonly answers: WorkedOut<Name> }> } = {
  report: aboutAll,
  working: aboutTime,
  calendar: aboutTime,
  staged: aboutTime,
  stops: aboutTime,
  effects: aboutChoices,
  receipt: aboutChoices,
  widest: aboutChoices,
  'side-by-side': aboutChoices,
  swings: aboutChoices,
  comparison: aboutColumns,
  'why-differ': aboutColumns,
  'today-money': aboutAll,
  dearest: () => import('./answers-dearest.ts'),
  design: () => import('./answers-design.ts'),
};

/** The answer of that name for a path at the prices it names. Throws where a part does not come, else only on a mistake of ours. */
export async function answerTo<Name extends AnswerName>(
  name: Name,
  path: Path,
  ...more: More<Name>
): Promise<Answers[Name]> {
  const { answers } = await fetched(places[name]());
  return answers[name](path, more[0] as DetailOf<Name>);
}
