import type { State } from '../choices/state.ts';
import type { Path } from '../core/path.ts';
import type { StageId } from '../core/task.ts';
import { wholeCents } from '../cost/amounts.ts';
import type { Totals } from '../cost/builds.ts';
import type { Column, Edition } from '../cost/edition.ts';
import type { Orders } from '../cost/orders.ts';
import { BUILDS } from '../cost/strata.ts';
import { unitsToPay, wantedOf } from '../cost/wanted.ts';
import { parts } from '../trade.ts';
import { everyBuild, type Stretch, type Trouble } from './hours.ts';
import type { Network } from './network.ts';

/** Cents in every build; credits are below zero. All of it together is the total of the build. */
export interface MoneyColumns {
  /** Of each delivery with its freight, tax and duty. */
  readonly deliveries: readonly Column[];
  /** Spent on what the plan of today does not ask for. */
  readonly loose: Column;
  readonly trouble: ReadonlyMap<StageId, Column>;
}

/** What the money of a way is made of besides its network. */
export interface MoneySources {
  readonly state: State;
  readonly path: Path;
  readonly edition: Edition;
  readonly orders: Orders;
  /** The totals of this way. */
  readonly totals: Totals;
}

const isCredit: readonly boolean[] = parts.map((part) => part.credit === true);

/** Cents of each delivery before freight: a band for what is still to buy, and what was quoted or paid. */
function goodsOf(
  { deliveries }: Network,
  { state, path, edition, orders }: MoneySources,
  { from, to }: Stretch,
): Column[] {
  const prices = edition.prices(state.machine.size);
  const owned = new Set(path.owned);
  const wanted = wantedOf(state, state.machine, edition.book);
  return deliveries.map(({ part, at }) => {
    const column = new Float64Array(BUILDS);
    const order = orders.get(at);
    const have = owned.has(part);
    const { need, keep } = wanted[at]!;
    const times = have ? 0 : unitsToPay(need + keep - (order?.goods ? order.units : 0), part, edition.book);
    const paid = order?.goods && (order.spent || !have) ? wholeCents(order.goods) : 0;
    const sign = isCredit[at] ? -1 : 1;
    for (let build = from; build < to; build += 1)
      column[build] = sign * (paid + times * prices[at]![build]!);
    return column;
  });
}

/** Cents paid for parts that are not among the deliveries. */
function looseCents({ deliveries }: Network, orders: Orders): number {
  const planned = new Set(deliveries.map((delivery) => delivery.at));
  let cents = 0;
  for (const [at, { goods, spent }] of orders)
    if (goods && spent && !planned.has(at)) cents += (isCredit[at] ? -1 : 1) * wholeCents(goods);
  return cents;
}

/**
 * Gives out an amount of each build in proportion to the columns, none of them below zero, rounded along the running sum
 * so that not a cent is lost. What nothing can carry goes to `rest`.
 */
function giveOut(amount: Column, over: readonly Column[], rest: Column, { from, to }: Stretch): Column[] {
  const shares = over.map(() => new Float64Array(BUILDS));
  for (let build = from; build < to; build += 1) {
    const all = over.reduce((sum, column) => sum + column[build]!, 0);
    if (all <= 0) {
      rest[build]! += amount[build]!;
      continue;
    }
    let sum = 0;
    let given = 0;
    for (let at = 0; at < over.length; at += 1) {
      sum += over[at]![build]!;
      const upTo = Math.round((amount[build]! * sum) / all);
      shares[at]![build] = upTo - given;
      given = upTo;
    }
  }
  return shares;
}

const NOTHING: Column = new Float64Array(BUILDS);

/**
 * What each delivery costs at the door, what trouble costs in each stage, and what was spent besides, in every build of a
 * way: together the total of that build. Freight, tax and duty are shared out over the goods that come from afar.
 */
export function moneyColumns(
  network: Network,
  sources: MoneySources,
  trouble: Trouble,
  builds: Stretch = everyBuild,
): MoneyColumns {
  const { edition, totals, orders } = sources;
  const goods = goodsOf(network, sources, builds);
  const loose = new Float64Array(BUILDS);
  const spent = looseCents(network, orders);
  for (let build = builds.from; build < builds.to; build += 1) loose[build] = spent;
  const fromAfar = goods.map((column, number) => {
    const { at } = network.deliveries[number]!;
    return isCredit[at] || edition.local[at] ? NOTHING : column;
  });
  const landed = giveOut(totals.landed, fromAfar, loose, builds);
  const stages = [...trouble.cents.keys()];
  const met = stages.map((stage) => trouble.cents.get(stage)!);
  const troubles = giveOut(totals.troubleMoney, met, loose, builds);
  for (const [number, column] of goods.entries())
    for (let build = builds.from; build < builds.to; build += 1) column[build]! += landed[number]![build]!;
  return {
    deliveries: goods,
    loose,
    trouble: new Map(stages.map((stage, at) => [stage, troubles[at]!])),
  };
}
