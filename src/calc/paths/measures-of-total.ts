import { figure } from '../core/machine.ts';
import { threeOf } from '../cost/buckets.ts';
import type { Totals } from '../cost/builds.ts';
import type { Difference } from '../cost/difference.ts';
import type { Present } from './present.ts';

/** What a swing is told in: dollars, hours, weeks out of use. */
export const swingKinds = ['money', 'hours', 'weeks'] as const;

export type SwingKind = (typeof swingKinds)[number];

export type PerKind<T> = Readonly<Record<SwingKind, T>>;

const HUNDREDTHS = 100;

/** Tenth, middle and ninetieth of a hundred of a total, in dollars, hours and weeks. */
export function threeOfTotals({ machine }: Pick<Present, 'machine'>, totals: Totals): PerKind<Difference> {
  const perWeek = figure(machine, 'hours-per-week') * HUNDREDTHS;
  return {
    money: threeOf(totals.money, HUNDREDTHS),
    hours: threeOf(totals.hours, HUNDREDTHS),
    weeks: threeOf(totals.hoursOut, perWeek),
  };
}

export const perKind = <T>(of: (kind: SwingKind) => T): PerKind<T> => ({
  money: of('money'),
  hours: of('hours'),
  weeks: of('weeks'),
});
