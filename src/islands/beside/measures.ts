import type { Spread } from '../../calc/evaluate.ts';
import { toShown } from '../shared/currency.ts';
import {
  hoursMark,
  hoursRange,
  middleHalf,
  moneyMark,
  moneyRange,
  weeksMark,
  weeksRange,
} from '../shared/format.ts';

/** What is drawn on rods, a row each. */
export const MEASURES = {
  money: {
    label: 'Money, everything in',
    half: (from: number, to: number) => moneyRange(from, to),
    shown: toShown,
    mark: moneyMark,
    none: 'Nothing once.',
  },
  hours: {
    label: 'Hours of your own',
    half: hoursRange,
    shown: (n: number) => n,
    mark: hoursMark,
    none: 'None.',
  },
  weeksOut: {
    label: 'Weeks without the lathe',
    half: weeksRange,
    shown: (n: number) => n,
    mark: (n: number) => `${weeksMark(n)} wk`,
    none: 'The lathe stays in use.',
  },
} as const;

export type MeasureId = keyof typeof MEASURES;

const isNothing = ({ twenty }: Spread): boolean => (twenty[twenty.length - 1] ?? 0) < 0.05;

/** The middle half in words, or what is said where there is nothing. */
export function halfOf(id: MeasureId, spread: Spread): { readonly said: string; readonly isNone: boolean } {
  const { half, none } = MEASURES[id];
  if (isNothing(spread)) return { said: none, isNone: true };
  const { from, to } = middleHalf(spread.twenty);
  const said = half(from, to);
  return { said: /[1-9]/.test(said) ? said : 'nothing', isNone: false };
}
