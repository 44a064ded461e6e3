import type { SizeClass } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import type { StageId } from '../core/task.ts';
import type { Resolved } from '../cost/builds.ts';
import type { Column, Edition } from '../cost/edition.ts';
import { BUILDS } from '../cost/strata.ts';
import { parts } from '../trade.ts';
import { everyBuild, type Stretch, type Trouble } from './hours.ts';
import type { Network } from './network.ts';

/** Cents in every build: of each delivery with its freight, tax and duty, and of trouble by stage. Credits are below zero. */
export interface MoneyColumns {
  readonly deliveries: readonly Column[];
  readonly trouble: ReadonlyMap<StageId, Column>;
}

const isCredit: readonly boolean[] = parts.map((part) => part.credit === true);

/** Goods only: what freight, tax and duty are reckoned on. */
const carriesFreight = (at: number, edition: Edition): boolean => !isCredit[at] && !edition.local[at];

/**
 * What each delivery costs at the door. The share for freight is rounded along the running sum of the goods, so that
 * the deliveries of a build add up to its total to the cent.
 */
export function moneyColumns(
  { deliveries }: Network,
  way: Pick<Resolved, 'landed'>,
  trouble: Trouble,
  size: SizeClass,
  path: Path,
  edition: Edition,
  { from, to }: Stretch = everyBuild,
): MoneyColumns {
  const prices = edition.prices(size);
  const owned = new Set(path.owned);
  const goods = new Float64Array(BUILDS);
  const columns = deliveries.map(({ part, at, qty }) => {
    const column = new Float64Array(BUILDS);
    if (owned.has(part)) return column;
    const times = isCredit[at] ? -qty : qty;
    const landed = carriesFreight(at, edition);
    for (let build = from; build < to; build += 1) {
      const cents = times * prices[at]![build]!;
      column[build] = cents;
      if (!landed) continue;
      const share = way.landed[build]!;
      const before = Math.round(goods[build]! * share);
      goods[build]! += cents;
      column[build]! += Math.round(goods[build]! * share) - before;
    }
    return column;
  });
  return { deliveries: columns, trouble: trouble.cents };
}
