import { quantile, sortColumn } from '../../cost/columns.ts';
import type { Column } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import { saysOf } from '../effects.ts';
import type { BuiltColumn } from './column.ts';

/**
 * Two columns in one measure, build by build, so that what is luck in both falls out. Differences are the first less the
 * second, in dollars or hours.
 */
export interface PairSide {
  /** Builds of twenty in which the first is above the second, below it, and the same; they add up to twenty. */
  readonly above: number;
  readonly below: number;
  readonly same: number;
  /** The middle half of the twenty differences. */
  readonly from: number;
  readonly to: number;
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
  /** A tie where the middle sixteen of twenty differences reach both sides of nothing, or are all nothing: as strips say it. */
  readonly reading: 'above' | 'below' | 'tie';
  /** Twenty equally likely differences, in order. */
  readonly twenty: readonly number[];
}

/** Positions of two columns, and how they differ. */
export interface Pair {
  readonly a: number;
  readonly b: number;
  readonly money: PairSide;
  readonly hours: PairSide;
}

const TWENTY = 20;
const HUNDREDTHS = 100;
const MIDDLE_FROM = TWENTY / 4;
const MIDDLE_TO = (TWENTY * 3) / 4 - 1;

/** Whole hundredths, half away from nothing, so that the other way round is the same with the sign turned. */
const whole = (value: number): number => (value < 0 ? 0 - Math.floor(0.5 - value) : Math.floor(value + 0.5));

/**
 * Builds above and below as parts of twenty, by largest remainder; as many on either side stay as many. `builds` is the
 * number of all.
 */
export function ofTwentyBuilds(above: number, below: number, builds: number): [above: number, below: number] {
  const share = (count: number): number => (count * TWENTY) / builds;
  if (above === below) {
    const each = Math.min(TWENTY / 2, Math.round(share(above)));
    return [each, each];
  }
  const parts = [above, below, builds - above - below].map((count, at) => ({ at, count, of: share(count) }));
  const seats = parts.map(({ of }) => Math.floor(of));
  const left = TWENTY - seats.reduce((sum, each) => sum + each, 0);
  const byRest = parts.sort((p, q) => (q.of % 1) - (p.of % 1) || q.count - p.count);
  for (const { at } of byRest.slice(0, left)) seats[at]! += 1;
  return [seats[0]!, seats[1]!];
}

/**
 * Quantiles of differences in dollars or hours, those of the upper half counted from above: the other way round they are
 * the same to the last digit, with the sign turned.
 */
function quantilesOf(sorted: Column) {
  const turned = sorted.map((value) => 0 - value).reverse();
  return {
    low: (p: number): number => whole(quantile(sorted, p)) / HUNDREDTHS,
    high: (p: number): number => (0 - whole(quantile(turned, p))) / HUNDREDTHS,
  };
}

/** How two columns of hundredths differ. */
export function sideOf(first: Column, second: Column): PairSide {
  const sorted = sortColumn(first.map((value, build) => whole(value - second[build]!)));
  const { low, high } = quantilesOf(sorted);
  const [above, below] = ofTwentyBuilds(
    sorted.filter((value) => value > 0).length,
    sorted.filter((value) => value < 0).length,
    BUILDS,
  );
  const lower = Array.from({ length: TWENTY / 2 }, (_, dot) => (dot + 0.5) / TWENTY);
  const twenty = [...lower.map(low), ...lower.toReversed().map(high)];
  const three = { p10: low(0.1), p50: low(0.5), p90: high(0.1) };
  const says = saysOf(three);
  return {
    above,
    below,
    same: TWENTY - above - below,
    from: twenty[MIDDLE_FROM]!,
    to: twenty[MIDDLE_TO]!,
    ...three,
    reading: says === 'more' ? 'above' : says === 'less' ? 'below' : 'tie',
    twenty,
  };
}

/** Every pair of columns, the earlier one first. */
export const pairsOf = (columns: readonly BuiltColumn[]): Pair[] =>
  columns.flatMap(({ builds: one }, a) =>
    columns.slice(a + 1).map(
      ({ builds: other }, after): Pair => ({
        a,
        b: a + 1 + after,
        money: sideOf(one.money, other.money),
        hours: sideOf(one.hours, other.hours),
      }),
    ),
  );
