import type { Ability, AbilityRow } from '../../calc/core/alternative.ts';
import type { Spread } from '../../calc/evaluate.ts';
import { hoursRange, middleHalf, moneyRange, ofTwenty } from '../shared/format.ts';

/** What the rows of abilities are called. */
export const ABILITY_NAMES: Readonly<Record<AbilityRow, string>> = {
  threads: 'Threads',
  profiles: 'Curves and tapers',
  batches: 'Batches',
  handUse: 'Use by hand',
  reversible: 'Can be undone',
};

/** As many as stand side by side: on a sheet, and on a phone. */
export const MOST_COLUMNS = 4;
export const PHONE_COLUMNS = 2;

export const CAN = { yes: 'Yes.', partly: 'Partly.', no: 'No.' } as const;

export const sayAble = ({ can, say }: Ability): string => `${CAN[can]} ${say}`;

/** "3 of 20", or "under 1 of 20". */
export const sayChance = (count: number): string => (count < 1 ? 'under 1 of 20' : ofTwenty(count));

interface Year {
  readonly perYear: { readonly money: Spread; readonly hours: Spread } | undefined;
  readonly paidByUse: boolean;
}

/** The middle half of a year's money and hours, or undefined where nothing is paid for the use. */
export function yearOf({ perYear }: Year): readonly [money: string, hours: string] | undefined {
  if (!perYear) return undefined;
  const [money, hours] = [middleHalf(perYear.money.twenty), middleHalf(perYear.hours.twenty)];
  return [moneyRange(money.from, money.to), hoursRange(hours.from, hours.to)];
}

/** Two columns with another in one place; the one that stands there already changes sides. */
export function swapped<Id>(shown: readonly Id[], place: number, id: Id): Id[] {
  const there = shown.indexOf(id);
  return shown.map((each, at) => {
    if (at === place) return id;
    return at === there ? (shown[place] ?? each) : each;
  });
}
