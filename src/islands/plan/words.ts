import type { Band } from '../../calc/core/band.ts';
import type { Check } from '../../calc/core/check.ts';
import type { Quantity } from '../../calc/core/quantity.ts';
import type { ChoiceView, Report } from '../../calc/evaluate.ts';
import { decisionById, optionById } from '../../calc/guide.ts';
import type { Units } from '../shared/format.ts';
import {
  countWithin,
  hoursRange,
  lengthText,
  listed,
  middleHalf,
  moneyRange,
  ofTwenty,
  plain,
  roundMoney,
  significant,
} from '../shared/format.ts';
import { spanText } from '../shared/span.ts';

/** A price of a part: two figures, to the dollar, because many parts cost less than ten. */
const price = (n: number): string => `$${plain(Math.round(significant(n, 2)))}`;

/** "$4–11": low to high of a price. */
export const priceRange = ([low, , high]: Band): string => spanText(price(low), price(high));

/** "1.5–6 h": low to high of a task. */
export const taskHours = ([low, , high]: Band): string => hoursRange(low, high);

/** "1.6 times what is needed". */
export function marginText({ margin }: Check): string {
  if (margin === undefined) return '';
  if (margin >= 100) return 'far more than needed';
  const times = plain(significant(margin, 2), 2);
  if (times === '1') return 'just what is needed';
  return margin < 1 ? `${times} of what is needed` : `${times} times what is needed`;
}

const FIXED: Readonly<Record<string, string>> = {
  kg: 'kg',
  W: 'W',
  N: 'N',
  N·m: 'N·m',
  V: 'V',
  'm/s': 'm/s',
  K: 'K',
  'h/week': 'h a week',
  '1': '',
};

/** A worked-out quantity in the unit a reader knows: three figures, lengths in millimetres or inches. */
export function quantityText({ value, unit }: Quantity, units: Units): string {
  const figure = (n: number): string => plain(significant(n, 3), 3);
  if (unit === 'm') return lengthText(significant(value, 3), units);
  if (unit === 'rev/s') return `${figure(value * 60)} rpm`;
  if (unit === 'A') return value < 0.1 ? `${figure(value * 1000)} mA` : `${figure(value)} A`;
  if (unit === 'Hz') return `${figure(value)} a second`;
  return `${figure(value)} ${FIXED[unit] ?? unit}`.trim();
}

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
    limit: `$${plain(limit, 2)}`,
  };
}
