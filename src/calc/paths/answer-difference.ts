import type { Answer } from '../core/path.ts';
import { differenceOfBuilds } from '../cost/difference.ts';
import { decisions } from '../guide.ts';
import type { Slice } from './otherwise.ts';
import { isPlainSum, type Present, presentOf } from './present.ts';
import { differenceFor, type MoneyAndHours } from './strip.ts';

const HUNDREDTHS = 100;

/**
 * What an allowed answer does to money and hours. Where quotes, orders or a flat allowance stand, a total is more than a
 * sum of columns: the changed path is then evaluated whole.
 */
export function answerDifference(
  present: Present,
  at: number,
  answer: Answer,
  slices: readonly Slice[],
): MoneyAndHours {
  if (isPlainSum(present)) return differenceFor(present, slices);
  const { path } = present.planned;
  const answers = { ...path.answers, [decisions[at]!.id]: answer };
  const { totals } = presentOf({ ...path, answers }, present.edition.book);
  return {
    money: differenceOfBuilds(present.totals.money, totals.money, HUNDREDTHS),
    hours: differenceOfBuilds(present.totals.hours, totals.hours, HUNDREDTHS),
  };
}
