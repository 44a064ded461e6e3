import type { Answer, Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import { type Difference, differenceOfBuilds } from '../cost/difference.ts';
import { decisions } from '../guide.ts';
import { type Says, saysOf } from './effects.ts';
import { type Moved, movedBetween, toldOf } from './moved.ts';
import { presentOf } from './present.ts';

/** What an answer, or a figure typed in, moved. Dollars and hours after less before, in the same builds. */
export interface Receipt extends Moved {
  readonly answers: readonly { readonly decision: string; readonly before: Answer; readonly after: Answer }[];
  /** Figures of the lathe and the workshop that changed, by fact id. */
  readonly facts: readonly string[];
  /** Parts that went into the drawer or out of it. */
  readonly owned: readonly string[];
  readonly money: Difference;
  readonly moneySays: Says;
  readonly hours: Difference;
  readonly hoursSays: Says;
  readonly hoursOut: Difference;
}

const HUNDREDTHS = 100;

const same = (a: Answer, b: Answer): boolean => a.length === b.length && a.every((each) => b.includes(each));

const answersChanged = (before: Path, after: Path): Receipt['answers'] =>
  decisions.flatMap(({ id }) => {
    const was = before.answers[id] ?? [];
    const is = after.answers[id] ?? [];
    return same(was, is) ? [] : [{ decision: id, before: was, after: is }];
  });

function factsChanged(before: Path, after: Path): string[] {
  const ids = new Set([...Object.keys(before.facts), ...Object.keys(after.facts)]);
  return [...ids].filter((id) => before.facts[id] !== after.facts[id]);
}

const inOnlyOne = (a: readonly string[], b: readonly string[]): string[] => [
  ...a.filter((each) => !b.includes(each)),
  ...b.filter((each) => !a.includes(each)),
];

/**
 * What moved from one path to the next, `wasBook` where the prices before were those of another edition. The path before
 * is all that undoing it takes.
 */
export function receiptOf(before: Path, after: Path, book: PriceBook, wasBook = book): Receipt {
  const here = presentOf(before, wasBook);
  const there = presentOf(after, book);
  const answers = answersChanged(before, after);
  const difference = (of: 'money' | 'hours' | 'hoursOut'): Difference =>
    differenceOfBuilds(here.totals[of], there.totals[of], HUNDREDTHS);
  const money = difference('money');
  const hours = difference('hours');
  return {
    answers,
    facts: factsChanged(before, after),
    owned: inOnlyOne(before.owned, after.owned),
    money,
    moneySays: saysOf(money),
    hours,
    hoursSays: saysOf(hours),
    hoursOut: difference('hoursOut'),
    ...movedBetween(
      toldOf(here.planned),
      toldOf(there.planned),
      answers.map(({ decision }) => decision),
    ),
  };
}
