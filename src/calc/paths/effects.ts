import { blocksOf } from '../choices/blocks.ts';
import type { Status } from '../choices/choose.ts';
import type { Decision, Option } from '../core/decision.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Difference } from '../cost/difference.ts';
import { decisions } from '../guide.ts';
import type { Block } from '../report.ts';
import { answerDifference } from './answer-difference.ts';
import { type Moved, movedBetween, type Told, toldOf } from './moved.ts';
import { answerWith, changedTo } from './one-change.ts';
import { otherwise, standingAt } from './otherwise.ts';
import { type Present, presentOf } from './present.ts';
import { NO_DIFFERENCE } from './strip.ts';

/** What a difference says: it is unclear where the middle eight of ten builds lie on both sides of nothing. */
export type Says = 'more' | 'less' | 'same' | 'unclear';

/** What one option would do, before it is chosen. Differences are in the same builds, below zero: less. */
export interface OptionStrip {
  readonly option: string;
  /** It stands now, chosen or assumed. */
  readonly now: boolean;
  /** Where several may be ticked: what choosing it does. */
  readonly does: 'chosen' | 'ticked' | 'unticked';
  /** Why it cannot be taken: rules with the answers that clash, or no finished answer. Empty: it can. */
  readonly blocked: Block['reasons'];
  readonly allowed: boolean;
  readonly money: Difference;
  readonly moneySays: Says;
  readonly hours: Difference;
  readonly hoursSays: Says;
  /** Open questions whose planned answer moves along. */
  readonly follows: readonly string[];
}

/** A question with the strips of its options, on one scale. */
export interface QuestionStrips {
  readonly decision: string;
  readonly status: Status;
  readonly options: readonly OptionStrip[];
  /** Lowest and highest end of all strips, nothing among them: dollars and hours. */
  readonly moneyScale: readonly [low: number, high: number];
  readonly hoursScale: readonly [low: number, high: number];
}

/** An option with all that it moves besides money and hours; undefined where it cannot be taken or stands already. */
export interface OptionEffect extends OptionStrip {
  readonly moves: Moved | undefined;
}

export interface QuestionEffects extends Omit<QuestionStrips, 'options'> {
  readonly options: readonly OptionEffect[];
}

export function saysOf({ p10, p90 }: Difference): Says {
  if (p10 === 0 && p90 === 0) return 'same';
  if (p10 >= 0) return 'more';
  return p90 <= 0 ? 'less' : 'unclear';
}

/** Answer of the owner's once this option is chosen or ticked; undefined where it stands alone already. */
function answerFor(present: Present, at: number, option: Option) {
  const decision = decisions[at]!;
  return option.incomplete === undefined
    ? answerWith(decision, standingAt(present, at), option.id)
    : undefined;
}

function stripOf(present: Present, at: number, option: Option, blocks: readonly Block[]): OptionStrip {
  const decision = decisions[at]!;
  const now = standingAt(present, at).includes(option.id);
  const answer = answerFor(present, at, option);
  const blocked = blocks.find((block) => block.option === option.id)?.reasons ?? [];
  const other = answer && blocked.length === 0 ? otherwise(present, at, answer) : undefined;
  const { money, hours } =
    answer && other
      ? answerDifference(present, at, answer, other.slices)
      : { money: NO_DIFFERENCE, hours: NO_DIFFERENCE };
  return {
    option: option.id,
    now,
    does: decision.many ? (now ? 'unticked' : 'ticked') : 'chosen',
    blocked,
    allowed: now || other !== undefined,
    money,
    moneySays: saysOf(money),
    hours,
    hoursSays: saysOf(hours),
    follows: other?.follows ?? [],
  };
}

const scaleOf = (differences: readonly Difference[]): [number, number] => [
  Math.min(0, ...differences.map(({ p10 }) => p10)),
  Math.max(0, ...differences.map(({ p90 }) => p90)),
];

function stripsAt(present: Present, at: number): QuestionStrips {
  const { state, status } = present.planned;
  const blocks = blocksOf(state, status, at);
  const options = decisions[at]!.options.map((option) => stripOf(present, at, option, blocks));
  return {
    decision: decisions[at]!.id,
    status: status[at]!,
    options,
    moneyScale: scaleOf(options.map(({ money }) => money)),
    hoursScale: scaleOf(options.map(({ hours }) => hours)),
  };
}

/** Questions of the guide that arise: what the lathe or the workshop simply is cannot be answered otherwise. */
const askedNow = ({ planned }: Present): number[] =>
  decisions.flatMap((decision, at) => (isChoice(decision) && planned.status[at] !== 'not-asked' ? [at] : []));

const isChoice = (decision: Decision): boolean => decision.place === 'guide';

/**
 * Money and hours of every option of every question that arises, against the path as it is, in the same 2,000 builds:
 * the same figures as evaluating each changed path, from the columns that change alone. With questions open every one
 * of the 40 ways of answering is changed. `only` names the questions wanted, such as the one in view. Throws only on an
 * author's mistake.
 */
export function effectsOf(path: Path, book: PriceBook, only?: readonly string[]): QuestionStrips[] {
  const present = presentOf(path, book);
  return askedNow(present)
    .filter((at) => only === undefined || only.includes(decisions[at]!.id))
    .map((at) => stripsAt(present, at));
}

/** One question in full: strips, and for every option that can be taken what else it moves. Undefined where it is not asked. */
export function effectsOfQuestion(
  path: Path,
  book: PriceBook,
  decision: string,
): QuestionEffects | undefined {
  const present = presentOf(path, book);
  const at = askedNow(present).find((each) => decisions[each]!.id === decision);
  if (at === undefined) return undefined;
  const strips = stripsAt(present, at);
  const told = toldOf(present.planned);
  const options = strips.options.map((strip, each) => ({
    ...strip,
    moves: strip.allowed ? movesOf(present, told, at, decisions[at]!.options[each]!) : undefined,
  }));
  return { ...strips, options };
}

function movesOf(present: Present, told: Told, at: number, option: Option): Moved | undefined {
  const answer = answerFor(present, at, option);
  const then = answer && changedTo(present.planned, at, answer);
  return then && movedBetween(told, toldOf(then), [decisions[at]!.id]);
}
