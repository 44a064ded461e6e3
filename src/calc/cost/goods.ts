import type { State } from '../choices/state.ts';
import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import { parts } from '../trade.ts';
import { wholeCents } from './amounts.ts';
import { chargeSums, type OpenCharge } from './charge-columns.ts';
import type { Term } from './columns.ts';
import type { Edition } from './edition.ts';
import type { Orders } from './orders.ts';
import { countryOf } from './rates.ts';
import { shopOrders } from './shop-orders.ts';
import { unitsToPay, type Wanted } from './wanted.ts';

/** Whole cents that are the same in every build. */
export interface Fixed {
  readonly goods: number;
  readonly local: number;
  /** At or below zero. */
  readonly credits: number;
  /** Of the goods, those that no shop is named for: freight, tax and duty are a share of them. */
  readonly shared: number;
  /** Carriage, tax and duty known to the cent. */
  readonly charges: number;
}

/** Everything that is bought on one way of answering. */
export interface Bought {
  readonly goods: readonly Term[];
  readonly local: readonly Term[];
  readonly credits: readonly Term[];
  readonly fixed: Fixed;
  /** Orders whose charges are only known as a range. */
  readonly charges: readonly OpenCharge[];
}

const NOTHING_FIXED: Fixed = { goods: 0, local: 0, credits: 0, shared: 0, charges: 0 };

const isCredit: readonly boolean[] = parts.map((part) => part.credit === true);
/** What is paid every year stands in no total. */
const isOnce: readonly boolean[] = parts.map((part) => part.yearly !== true);

/** Bands for what is still to buy, constants for what is quoted or paid. */
export function boughtOf(
  wanted: readonly Wanted[],
  state: State,
  machine: Machine,
  path: Path,
  edition: Edition,
  orders: Orders,
): Bought {
  const owned = new Set(path.owned);
  const bands = bandsOf(wanted, owned, machine, edition, orders);
  if (orders.size === 0) return { ...bands, fixed: NOTHING_FIXED, charges: [] };
  const belongs = (at: number): boolean => wanted[at]!.need > 0 && !owned.has(parts[at]!.id);
  return { ...bands, ...settledOf(orders, belongs, state, path, edition) };
}

/** What is neither owned nor covered by a quote or an order, as bands. */
function bandsOf(
  wanted: readonly Wanted[],
  owned: ReadonlySet<string>,
  machine: Machine,
  edition: Edition,
  orders: Orders,
): Pick<Bought, 'goods' | 'local' | 'credits'> {
  const prices = edition.prices(machine.size);
  const goods: Term[] = [];
  const local: Term[] = [];
  const credits: Term[] = [];
  for (let at = 0; at < parts.length; at += 1) {
    const { need, keep } = wanted[at]!;
    if (need === 0 || !isOnce[at] || owned.has(parts[at]!.id)) continue;
    const order = orders.get(at);
    const covered = order?.goods ? order.units : 0;
    const times = unitsToPay(need + keep - covered, parts[at]!.id, edition.book);
    if (times === 0) continue;
    const list = isCredit[at] ? credits : edition.local[at] ? local : goods;
    list.push({ column: prices[at]!, times: isCredit[at] ? -times : times });
  }
  return { goods, local, credits };
}

/** Sums that are the same in every build of a way. */
type Settled = Pick<Bought, 'fixed' | 'charges'>;

const settledBefore = new WeakMap<Orders, Map<string, Settled>>();

/** Many ways of answering take up the same quotes: their sums are worked out once. */
function settledOf(
  orders: Orders,
  belongs: (at: number) => boolean,
  state: State,
  path: Path,
  edition: Edition,
): Settled {
  const known = settledBefore.get(orders) ?? new Map<string, Settled>();
  settledBefore.set(orders, known);
  const taken = [...orders.keys()].filter((at) => orders.get(at)!.spent || belongs(at));
  const key = `${countryOf(state)} ${taken.join(' ')}`;
  const settled = known.get(key) ?? settle(orders, belongs, state, path, edition);
  known.set(key, settled);
  return settled;
}

/** What is paid, and what is quoted and belongs to the plan, with what comes on top of it. */
function settle(
  orders: Orders,
  belongs: (at: number) => boolean,
  state: State,
  path: Path,
  edition: Edition,
): Settled {
  const shops = shopOrders(orders, belongs, state, path, edition.book);
  const { cents, open } = chargeSums(shops, edition.book);
  const fixed = { ...NOTHING_FIXED, charges: cents, credits: -soldFor(orders, belongs) };
  for (const { terms, lines } of shops) {
    for (const { at, goods } of lines) {
      const sum = wholeCents(goods);
      const local = !terms && edition.local[at];
      fixed[local ? 'local' : 'goods'] += sum;
      if (!terms && !local) fixed.shared += sum;
    }
  }
  return { fixed, charges: open };
}

/** Cents that old parts were sold for, or that a buyer offers. */
function soldFor(orders: Orders, belongs: (at: number) => boolean): number {
  let cents = 0;
  for (const [at, { spent, goods }] of orders)
    if (goods && isCredit[at] && (spent || belongs(at))) cents += wholeCents(goods);
  return cents;
}
