import { answerMasks } from '../choices/choose.ts';
import type { State } from '../choices/state.ts';
import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import { quantities } from '../cost/bill.ts';
import { fillTotals, newTotals, type Resolved, resolve, type Totals } from '../cost/builds.ts';
import { type Edition, editionOf } from '../cost/edition.ts';
import { chanceOf, isCounted } from '../cost/risks.ts';
import { BUILDS } from '../cost/strata.ts';
import { type Way, waysOf } from '../cost/ways.ts';
import { machineOf } from '../facts.ts';
import { workAt } from '../schedule/work.ts';
import { risks, tasks } from '../trade.ts';
import { measured, readsOf } from './looks-at.ts';
import { type Planned, plannedOn } from './one-change.ts';

/** One way of answering as it stands, with everything that a change is compared with. */
export interface WayNow extends Way {
  readonly quantities: Float64Array;
  readonly work: readonly ReturnType<typeof workAt>[];
  readonly strikes: Int32Array;
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
  readonly ways: readonly WayNow[];
  readonly totals: Totals;
}

/** In how many of the 2,000 builds a risk strikes. */
export const strikesOf = (at: number, state: State): number =>
  isCounted(risks[at]!) ? Math.round(chanceOf(at, state) * BUILDS) : 0;

export function presentOf(path: Path, book: PriceBook): Present {
  const machine = machineOf(path.size, path.facts);
  const edition = editionOf(book);
  const planned = plannedOn(path, machine);
  const totals = newTotals();
  const ways = waysOf(path, planned, book.seed).map((way): WayNow => {
    const resolved = resolve(way.state, machine, path, edition);
    fillTotals(totals, resolved, edition, way.from, way.to);
    return { ...way, landed: resolved.landed, ...standing(way.state, machine) };
  });
  return { planned, given: answerMasks(path.answers), machine, edition, ways, totals };
}

function standing(state: State, machine: Machine): Pick<WayNow, 'quantities' | 'work' | 'strikes' | 'reads'> {
  return {
    quantities: quantities(state, machine),
    work: tasks.map((_, at) => workAt(at, state)),
    strikes: Int32Array.from(risks, (_, at) => strikesOf(at, state)),
    reads: measured.map(({ measure }) => readsOf(measure, state)),
  };
}
