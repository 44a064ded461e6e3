import type { Column } from '../cost/edition.ts';
import { paybackYears } from '../formulas/worth.ts';

/** What an hour may be worth, dollars; shown side by side, so that nobody has to name one figure. */
export const hourValues = [0, 10, 30] as const;

export interface PaybackCase {
  /** Dollars spent once, hours of building, hours saved a year, dollars a year no longer spent outside. */
  readonly money: number;
  readonly hours: number;
  readonly saved: number;
  readonly outside: number;
  /** Dollars that an hour is worth. */
  readonly perHour: number;
  /** Whether the hours of building count as spent. */
  readonly buildingCounts: boolean;
}

/** Years until it has paid for itself; undefined where it never does. */
export function paybackOf({
  money,
  hours,
  saved,
  outside,
  perHour,
  buildingCounts,
}: PaybackCase): number | undefined {
  const cost = money + (buildingCounts ? hours * perHour : 0);
  const years = paybackYears.compute({ cost, yearly: [saved * perHour + outside] });
  return Number.isFinite(years) ? years : undefined;
}

/** Pay-back over the builds: twenty ways in order, never last. */
export interface Payback {
  readonly perHour: number;
  readonly buildingCounts: boolean;
  /** Years in twenty equally likely ways; undefined: never. */
  readonly twenty: readonly (number | undefined)[];
  /** In how many of the twenty it never comes back. */
  readonly never: number;
  /** Half of the ways are quicker; undefined where half never come back. */
  readonly typical: number | undefined;
}

const HUNDREDTHS = 100;
const TWENTY = 20;

/** The same in every build: columns of cents and hundredths of an hour, dollars outside a year. */
export function paybackBuilds(
  { money, hours, saved }: { money: Column; hours: Column; saved: Column },
  outside: number,
  perHour: number,
  buildingCounts: boolean,
): Payback {
  const years = Array.from(
    money,
    (cents, build) =>
      paybackOf({
        money: cents / HUNDREDTHS,
        hours: hours[build]! / HUNDREDTHS,
        saved: saved[build]! / HUNDREDTHS,
        outside,
        perHour,
        buildingCounts,
      }) ?? Number.POSITIVE_INFINITY,
  ).sort((a, b) => a - b);
  const at = (p: number): number | undefined => {
    const year = years[Math.floor(p * years.length)]!;
    return Number.isFinite(year) ? year : undefined;
  };
  const twenty = Array.from({ length: TWENTY }, (_, dot) => at((dot + 0.5) / TWENTY));
  const never = twenty.filter((each) => each === undefined).length;
  return { perHour, buildingCounts, twenty, never, typical: at(0.5) };
}
