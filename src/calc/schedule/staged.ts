import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Range } from '../core/range.ts';
import type { Column } from '../cost/edition.ts';
import { editionOf } from '../cost/edition.ts';
import { totalsOf } from '../cost/totals.ts';
import { planState, waysOf } from '../cost/ways.ts';
import { machineOf } from '../facts.ts';
import { rangeOf } from './ranges.ts';
import { type StopPlan, stopsOf } from './stops.ts';
import { tallyOf } from './tally.ts';

const HUNDREDTHS = 100;

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

function buildsOf(path: Path, book: PriceBook): Builds {
  const machine = machineOf(path.size, path.facts);
  const edition = editionOf(book);
  const ways = waysOf(path, planState(path, machine), book.seed);
  const { money, hours } = totalsOf(ways, machine, path, edition);
  const { weeks, weeksOut } = tallyOf(ways, machine, path, edition);
  return { money, hours, weeks, weeksOut };
}

/** What a path costs more in stages than all at once, paired build by build, and where either may stop. */
export function stagedOrAtOnce(path: Path, book: PriceBook): StagedOrAtOnce {
  const [staged, once] = [ordered(path, 'in-stages'), ordered(path, 'all-at-once')];
  const [there, here] = [buildsOf(staged, book), buildsOf(once, book)];
  const more = (of: keyof Builds, unit: number): Range =>
    rangeOf(
      there[of].map((value, build) => value - here[of][build]!),
      unit,
    );
  return {
    extra: {
      money: more('money', HUNDREDTHS),
      hours: more('hours', HUNDREDTHS),
      weeks: more('weeks', 1),
      weeksOut: more('weeksOut', 1),
    },
    inStages: stopsOf(staged, book),
    atOnce: stopsOf(once, book),
  };
}
