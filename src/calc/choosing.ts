import type { Ability, AbilityRow, Alternative } from './core/alternative.ts';
import type { Family } from './core/family.ts';
import type { Path } from './core/path.ts';
import type { PriceBook } from './core/price-book.ts';
import { type ChoiceSwing, choiceSwings } from './paths/choice-swings.ts';
import { presentOf } from './paths/present.ts';
import type { Spread } from './report.ts';
import { abilitiesOf } from './worth/abilities.ts';
import { type AlternativeFigures, alternativesOf, ofPath } from './worth/alternatives.ts';
import { columnOrder } from './worth/columns.ts';
import { type Worth, worthOf } from './worth/worth.ts';

export { CONVERSION } from './core/alternative.ts';
export type { Family } from './core/family.ts';
export { isFamily, usualFamily } from './core/family.ts';
export { type Carried, carriedBy } from './paths/carried.ts';
export type { Bar, ChoiceSwing, SwingEnd } from './paths/choice-swings.ts';
export {
  effectsOf,
  effectsOfQuestion,
  type OptionEffect,
  type OptionStrip,
  type QuestionEffects,
  type QuestionStrips,
  type Says,
} from './paths/effects.ts';
export type { Moved, MovedCheck, MovedRisk } from './paths/moved.ts';
export { type Receipt, receiptOf } from './paths/receipt.ts';
export {
  type ChangedAnswer,
  cheapestWay,
  countWays,
  type Limit,
  type LimitKind,
  type SearchProgress,
  searchNow,
  searchWays,
  type Wanted,
  type WayFigures,
  type WaysThrough,
  type WayThrough,
} from './paths/search.ts';
export { type Swings, swingsOf } from './paths/swings.ts';
export type { UnknownSwing } from './paths/unknown-swings.ts';
export type { AlternativeFigures } from './worth/alternatives.ts';
export type { Payback } from './worth/payback.ts';
export type { Sentence } from './worth/sentence.ts';
export type { Signal } from './worth/signals.ts';
export type { WorthVerdict } from './worth/verdict.ts';
export type { AlternativeWorth, FamilyWorth, Worth } from './worth/worth.ts';

/** The owner's own plan in the rows of the alternatives. */
export interface OwnColumn {
  readonly abilities: Readonly<Record<AbilityRow, Ability>>;
  readonly money: Spread;
  readonly hours: Spread;
  readonly weeksOut: Spread;
}

/** A conversion and everything else that may answer the same wish, side by side. Plain data. */
export interface SideBySide {
  readonly own: OwnColumn;
  readonly alternatives: readonly AlternativeFigures[];
  /** Ids in the order of the columns, the owner's plan (`CONVERSION`) among them. */
  readonly order: readonly string[];
  readonly worth: Worth;
}

/** The owner's plan beside the alternatives of a list, in the same builds, with the verdict that orders them. */
export function sideBySide(
  path: Path,
  book: PriceBook,
  list: readonly Alternative[],
  families: readonly Family[] = path.families ?? [],
): SideBySide {
  const { state } = presentOf(path, book).planned;
  const worth = worthOf(path, book, families, list);
  const { money, hours, weeksOut } = ofPath(path, book);
  return {
    own: { abilities: abilitiesOf(state), money, hours, weeksOut },
    alternatives: alternativesOf(path, book, list, families),
    order: columnOrder(state, worth.verdict, list),
    worth,
  };
}

/** Questions still open that widen the range most, in money; what a quick sheet names as the reason for its width. */
export const widestOpen = (path: Path, book: PriceBook, count = 6): ChoiceSwing[] =>
  choiceSwings(presentOf(path, book))
    .filter(({ status }) => status === 'open' || status === 'clash')
    .slice(0, count);
