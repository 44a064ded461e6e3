import type { State } from '../choices/state.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Progress } from '../core/progress.ts';
import { editionOf } from '../cost/edition.ts';
import { billLines } from '../cost/lines.ts';
import { ordersOf } from '../cost/orders.ts';
import { type Wanted, wantedOf } from '../cost/wanted.ts';
import { planState, waysOf } from '../cost/ways.ts';
import { machineOf } from '../facts.ts';
import type { BillLine } from '../report.ts';
import { calendarOf as stageDays } from './order-by.ts';
import { planOf } from './plan.ts';
import { type Prepared, prepare } from './runs.ts';

/** A path ready to be worked: the plan itself in every build, and the ways of answering that the builds stand on. */
export interface PreparedPath {
  readonly path: Path;
  readonly book: PriceBook;
  readonly state: State;
  readonly own: Prepared;
  readonly ways: readonly Prepared[];
  readonly wanted: readonly Wanted[];
  /** Lines of the bill that are paid once. */
  readonly lines: readonly BillLine[];
}

export function preparePath(path: Path, book: PriceBook, progress?: Progress): PreparedPath {
  const machine = machineOf(path.size, path.facts);
  const edition = editionOf(book);
  const plan = planState(path, machine);
  const wanted = wantedOf(plan.state, machine, book);
  const orders = ordersOf(wanted, path, edition);
  const own = prepare(plan.state, machine, path, edition, orders, progress);
  const ways = waysOf(path, plan, book.seed);
  return {
    path,
    book,
    state: plan.state,
    wanted,
    own,
    lines: billLines(
      {
        state: plan.state,
        machine,
        path,
        book,
        calendar: stageDays(planOf(plan.state).stages, own.hoursAWeek),
        wanted,
      },
      orders,
    ).filter((line) => !line.yearly),
    ways:
      ways.length === 1
        ? [own]
        : ways.map(({ state, from, to }) =>
            prepare(state, machine, path, edition, orders, progress, { from, to }),
          ),
  };
}
