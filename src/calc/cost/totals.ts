import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import { fillTotals, newTotals, resolve, type Totals } from './builds.ts';
import type { Edition } from './edition.ts';
import type { Orders } from './orders.ts';
import type { Way } from './ways.ts';

/**
 * The totals of all 2,000 builds, each on the way of answering that it belongs to. `orders`, what was quoted and bought,
 * are priced once, on the plan.
 */
export function totalsOf(
  ways: readonly Way[],
  machine: Machine,
  path: Path,
  edition: Edition,
  orders: Orders,
): Totals {
  const totals = newTotals();
  for (const way of ways) {
    fillTotals(totals, resolve(way.state, machine, path, edition, orders), edition, way.from, way.to);
  }
  return totals;
}
