import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Range } from '../core/range.ts';
import type { Column } from '../cost/edition.ts';
import { preparePath } from './prepared-ways.ts';
import { rangeOf } from './ranges.ts';
import { type StopPlan, stopsOf } from './stops.ts';
import { tallyOf } from './tally.ts';

const CENTS = 100;

/** The same job in stages and all at once. Plain data. */
export interface StagedOrAtOnce {
  /** What stages take more, in the same builds; below zero: less. Dollars, hours, weeks from start to finish, weeks out of use. */
  readonly extra: {
    readonly money: Range;
    readonly hours: Range;
    readonly weeks: Range;
    readonly weeksOut: Range;
  };
  readonly inStages: readonly StopPlan[];
  readonly atOnce: readonly StopPlan[];
}

interface Builds {
  readonly money: Column;
  readonly hours: Column;
  readonly weeks: Column;
  readonly weeksOut: Column;
}

const ordered = (path: Path, option: string): Path => ({
  ...path,
  answers: { ...path.answers, 'order-of-work': [option] },
});

function workedOut(path: Path, book: PriceBook): Builds & { stops: StopPlan[] } {
  const ready = preparePath(path, book);
  const { weeks, weeksOut, stageHours, stageCents } = tallyOf(ready.ways);
  const sum = (columns: Iterable<Column>): Column => {
    const total = new Float64Array(weeks.length);
    for (const column of columns)
      for (let build = 0; build < total.length; build += 1) total[build]! += column[build]!;
    return total;
  };
  return {
    money: sum(stageCents.values()),
    hours: sum(stageHours.values()),
    weeks,
    weeksOut,
    stops: stopsOf(ready),
  };
}

/** What a path costs more in stages than all at once, paired build by build, and where either may stop. */
export function stagedOrAtOnce(path: Path, book: PriceBook): StagedOrAtOnce {
  const [there, here] = [
    workedOut(ordered(path, 'in-stages'), book),
    workedOut(ordered(path, 'all-at-once'), book),
  ];
  const more = (of: keyof Builds, unit = 1): Range =>
    rangeOf(
      there[of].map((value, build) => value - here[of][build]!),
      unit,
    );
  return {
    extra: {
      money: more('money', CENTS),
      hours: more('hours'),
      weeks: more('weeks'),
      weeksOut: more('weeksOut'),
    },
    inStages: there.stops,
    atOnce: here.stops,
  };
}
