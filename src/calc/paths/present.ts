import { answerMasks } from '../choices/choose.ts';
import type { State } from '../choices/state.ts';
import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import { allowanceOf, fillTotals, newTotals, type Resolved, resolve, type Totals } from '../cost/builds.ts';
import { type Edition, editionOf } from '../cost/edition.ts';
import { type Orders, ordersOf } from '../cost/orders.ts';
import { wantedOf } from '../cost/wanted.ts';
import { type Way, waysOf } from '../cost/ways.ts';
import { machineOf } from '../facts.ts';
import { workAt } from '../schedule/work.ts';
import { parts, risks, tasks } from '../trade.ts';
import { type Counting, strikesAt, unitsAt } from './counting.ts';
import { measured, readsOf } from './looks-at.ts';
import { type Planned, plannedOn } from './one-change.ts';

/** One way of answering as it stands, with everything that a change is compared with. */
export interface WayNow extends Way {
  readonly units: readonly number[];
  readonly work: readonly ReturnType<typeof workAt>[];
  readonly strikes: readonly ReturnType<typeof strikesAt>[];
  readonly landed: Resolved['landed'];
  /** By measured figure: the questions it looked at. */
  readonly reads: readonly ReadonlySet<number>[];
}

/** The path as it is planned now, with its builds. */
export interface Present {
  readonly planned: Planned;
  /** The owner's answers as bits. */
  readonly given: Int32Array;
  readonly machine: Machine;
  readonly edition: Edition;
  readonly orders: Orders;
  readonly ways: readonly WayNow[];
  readonly totals: Totals;
}

export const countingOf = ({ planned, machine, edition }: Present, state: State): Counting => ({
  state,
  machine,
  path: planned.path,
  book: edition.book,
});

/** Every part is bought at its band and every trouble paid for: totals are sums of columns and nothing else. */
export const isPlainSum = ({ orders, planned }: Present): boolean =>
  orders.size === 0 && allowanceOf(planned.path) === undefined;

export function presentOf(path: Path, book: PriceBook): Present {
  const machine = machineOf(path.size, path.facts);
  const edition = editionOf(book);
  const planned = plannedOn(path, machine);
  const orders = ordersOf(wantedOf(planned.state, machine, book), path, edition);
  const totals = newTotals();
  const ways = waysOf(path, planned, book.seed).map((way): WayNow => {
    const resolved = resolve(way.state, machine, path, edition, orders);
    fillTotals(totals, resolved, edition, way.from, way.to);
    return { ...way, landed: resolved.landed, ...standing({ state: way.state, machine, path, book }) };
  });
  return { planned, given: answerMasks(path.answers), machine, edition, orders, ways, totals };
}

const standing = (counting: Counting): Pick<WayNow, 'units' | 'work' | 'strikes' | 'reads'> => ({
  units: parts.map((_, at) => unitsAt(at, counting)),
  work: tasks.map((_, at) => workAt(at, counting.state)),
  strikes: risks.map((_, at) => strikesAt(at, counting)),
  reads: measured.map(({ measure }) => readsOf(measure, counting.state)),
});
