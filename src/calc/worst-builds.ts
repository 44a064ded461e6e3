import type { Path } from './core/path.ts';
import type { PriceBook } from './core/price-book.ts';
import { type Base, baseOf, type Reason, reasonsOf } from './cost/build-reasons.ts';
import { resolve, type Totals } from './cost/builds.ts';
import { type Edition, editionOf } from './cost/edition.ts';
import { ordersOf } from './cost/orders.ts';
import { totalsOf } from './cost/totals.ts';
import { wantedOf } from './cost/wanted.ts';
import { planState, type Way, waysOf } from './cost/ways.ts';
import { machineOf } from './facts.ts';

export type { Reason } from './cost/build-reasons.ts';

/** One of the twenty shown builds and why it costs what it does. Whole cents; above = the reasons and the rest, exactly. */
export interface WorstBuild {
  /** Place among the twenty, 20 for the dearest. */
  readonly place: number;
  readonly money: number;
  /** What it costs beyond average prices with nothing going wrong. */
  readonly above: number;
  /** The largest reasons, at most three, largest first; below zero where one makes it cheaper. */
  readonly reasons: readonly Reason[];
  /** Everything else that moved it, in one sum. */
  readonly rest: number;
}

const SHOWN = 20;
const MOST_REASONS = 3;
/** Under ten dollars nothing is a reason. */
const WORTH_SAYING = 1000;

/** Builds in the order of their money, cheapest first. */
const byMoney = ({ money }: Totals): number[] =>
  Array.from(money, (_, build) => build).sort((a, b) => money[a]! - money[b]! || a - b);

/** The build that stands in the middle of its twentieth. */
const buildAt = (order: readonly number[], place: number): number =>
  order[Math.round(((place - 0.5) / SHOWN) * (order.length - 1))]!;

function explained(
  place: number,
  build: number,
  totals: Totals,
  base: Base,
  all: readonly Reason[],
): WorstBuild {
  const above = totals.money[build]! - base.goods - base.landed - base.credits;
  const reasons = all
    .filter(({ cents }) => Math.abs(cents) >= WORTH_SAYING)
    .sort((a, b) => Math.abs(b.cents) - Math.abs(a.cents))
    .slice(0, MOST_REASONS);
  const said = reasons.reduce((sum, { cents }) => sum + cents, 0);
  return { place, money: totals.money[build]!, above, reasons, rest: above - said };
}

const wayWith = (ways: readonly Way[], build: number): Way =>
  ways.find(({ from, to }) => build >= from && build < to)!;

/**
 * The dearest of the twenty builds that the screens show, each with its two or three largest reasons, dearest first.
 * Worked out when somebody asks. Throws only on an author's mistake.
 */
export function worstBuilds(path: Path, book: PriceBook, count = 5): WorstBuild[] {
  const machine = machineOf(path.size, path.facts);
  const edition: Edition = editionOf(book);
  const plan = planState(path, machine);
  const orders = ordersOf(wantedOf(plan.state, machine, edition.book), path, edition);
  const ways = waysOf(path, plan, book.seed);
  const totals = totalsOf(ways, machine, path, edition, orders);
  const base = baseOf(totals);
  const order = byMoney(totals);
  return Array.from({ length: Math.min(count, SHOWN) }, (_, nth) => {
    const place = SHOWN - nth;
    const build = buildAt(order, place);
    const way = resolve(wayWith(ways, build).state, machine, path, edition, orders);
    return explained(place, build, totals, base, reasonsOf(totals, way, edition, base, build));
  });
}
