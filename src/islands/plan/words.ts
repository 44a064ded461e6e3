import type { Band } from '../../calc/core/band.ts';
import type { ChoiceView, Report } from '../../calc/evaluate.ts';
import { decisionById, optionById } from '../../calc/guide.ts';
import { toShown } from '../shared/currency.ts';
import {
  countWithin,
  exactMoney,
  hoursRange,
  listed,
  middleHalf,
  moneyRange,
  ofTwenty,
  roundMoney,
  signed,
  significant,
} from '../shared/format.ts';
import { spanText } from '../shared/span.ts';

/** A price of a part: two figures, to the dollar, because many parts cost less than ten. */
const price = (n: number): string => signed(Math.round(significant(toShown(n), 2)));

/** "$4–11": low to high of a price. */
export const priceRange = ([low, , high]: Band): string => spanText(price(low), price(high));

/** "1.5–6 h": low to high of a task. */
export const taskHours = ([low, , high]: Band): string => hoursRange(low, high);

/** The options a choice stands on, in words. */
export function choiceText({ decision, options }: ChoiceView): string {
  const asked = decisionById(decision);
  if (!asked) return '';
  return listed(options.map((id) => optionById(asked, id)?.label ?? id));
}

const labelOf = (report: Report, decision: string): string => {
  const choice = report.choices.find((each) => each.decision === decision);
  return choice ? choiceText(choice) : '';
};

/** A name for the sheet, from what is driven and in which order it is built. */
export function planName(report: Report): string {
  const [driven, order] = [labelOf(report, 'driven-axes'), labelOf(report, 'order-of-work')];
  const lower = order.charAt(0).toLowerCase() + order.slice(1);
  return driven && order ? `${driven}; ${lower}` : driven || 'Plan';
}

/** The option labels of a decision on this path, or an empty text where it is not asked. */
export const saidFor = labelOf;

/** The middle half of the money, from the same twenty washers that the rod shows. */
export function halfOfMoney({ twenty }: Report['money']): string {
  const { from, to } = middleHalf(twenty);
  return moneyRange(from, to);
}

interface Summary {
  readonly money: string;
  readonly hours: string;
  readonly over: string;
  readonly limit: string;
}

/** The ranges of the sentence under the verdict; the limit is the owner's, or a round figure near the dear end. */
export function summaryOf({ money, hours }: Report, ownLimit: number | undefined): Summary {
  const limit = ownLimit ?? roundMoney(money.p90);
  const half = middleHalf(hours.twenty);
  return {
    money: halfOfMoney(money),
    hours: hoursRange(half.from, half.to).replace(/ h$/, ' hours'),
    over: ofTwenty(20 - countWithin(money.twenty, limit)),
    limit: exactMoney(limit),
  };
}
