import type { Report, Spread } from '../../calc/evaluate.ts';
import { keepsAnother } from '../../islands/plan/numbers.ts';
import { hoursRange, middleHalf, moneyRange, weeksRange } from '../../islands/shared/format.ts';

/** Money, hours and weeks of a report in half of the ways, in words. */
export interface FigureWords {
  readonly money: string;
  readonly hours: string;
  readonly weeks: string;
}

/** The middle half of a spread in the words of its kind. */
export const halfOf = (
  { twenty }: Pick<Spread, 'twenty'>,
  say: (lo: number, hi: number) => string,
): string => {
  const { from, to } = middleHalf(twenty);
  return say(from, to);
};

export const figureWords = ({ money, hours, weeksOut }: Report): FigureWords => ({
  money: halfOf(money, moneyRange),
  hours: halfOf(hours, hoursRange),
  weeks: halfOf(weeksOut, weeksRange),
});

/** What the weeks are called: with another lathe beside it, nothing stands still. */
export const weeksName = (report: Report): string =>
  keepsAnother(report) ? 'This lathe apart' : 'Lathe out of use';
