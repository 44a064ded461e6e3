import type { WayFigures } from '../../calc/choosing.ts';
import type { Report } from '../../calc/evaluate.ts';

/** The plan as ways are held against it: typically, and what 16 of 20 outcomes stay under. */
export type PlanFigures = Pick<WayFigures, 'money' | 'moneyP80' | 'hours' | 'hoursP80'>;

/** The plan with its open questions answered as it assumes; where that cannot be had, as it stands. */
export const planFigures = ({ money, hours }: Report, settled: WayFigures | undefined): PlanFigures =>
  settled ?? { money: money.p50, moneyP80: money.p80, hours: hours.p50, hoursP80: hours.p80 };
