import type { State } from '../../choices/state.ts';
import type { Term } from '../../cost/columns.ts';
import type { Edition } from '../../cost/edition.ts';
import { workAt } from '../../schedule/work.ts';
import { parts, risks, tasks } from '../../trade.ts';
import { type Counting, type strikesAt, unitsAt } from '../counting.ts';
import { type Again, timesOf } from '../deltas.ts';
import { measured, readsOf } from '../looks-at.ts';

type Work = ReturnType<typeof workAt>;
type Strikes = ReturnType<typeof strikesAt>;

/** What was counted on the plan at hand, by position. */
export interface Counts {
  readonly units: number[];
  readonly work: Work[];
  readonly strikes: Strikes[];
  readonly reads: ReadonlySet<number>[];
}

const NO_WORK: Work = { times: 0, extras: [], timesExtra: 0 };
const NO_STRIKES: Strikes = { builds: 0, paid: 0 };
const everyPosition = (list: readonly unknown[]): number[] => list.map((_, at) => at);
export const EVERYTHING: Again = {
  parts: everyPosition(parts),
  tasks: everyPosition(tasks),
  risks: everyPosition(risks),
};

/** Nothing counted yet. */
export const noCounts = (state: State): Counts => ({
  units: parts.map(() => 0),
  work: tasks.map(() => NO_WORK),
  strikes: risks.map(() => NO_STRIKES),
  reads: measured.map(({ measure }) => readsOf(measure, state)),
});

/** Figures that read a changed question are read again. */
export function readAgain({ reads }: Counts, state: State, changed: readonly number[]): void {
  for (const [at, { measure }] of measured.entries()) {
    if (changed.some((position) => reads[at]!.has(position))) reads[at] = readsOf(measure, state);
  }
}

/** What parts add: goods with freight on top, and what bears none: bought near by, and credits. */
interface Bought {
  readonly goods: Term[];
  readonly plain: Term[];
}

/** Counts the parts again; notes what their columns count more or less. */
export function countParts(
  again: readonly number[],
  counts: Counts,
  counting: Counting,
  edition: Edition,
): Bought {
  const prices = edition.prices(counting.machine.size);
  const bought: Bought = { goods: [], plain: [] };
  for (const at of again) {
    const units = unitsAt(at, counting);
    const times = units - counts.units[at]!;
    counts.units[at] = units;
    const { id, credit, yearly } = parts[at]!;
    if (times === 0 || yearly || counting.path.owned.includes(id)) continue;
    const list = credit || edition.local[at] ? bought.plain : bought.goods;
    list.push({ column: prices[at]!, times: credit ? -times : times });
  }
  return bought;
}

/** Counts the work again; what its columns count more or less. */
export function countWork(again: readonly number[], counts: Counts, state: State, edition: Edition): Term[] {
  const terms: Term[] = [];
  for (const at of again) {
    const was = counts.work[at]!;
    const then = workAt(at, state);
    counts.work[at] = then;
    if (then.times !== was.times) terms.push({ column: edition.hours[at]!, times: then.times - was.times });
    if (then.extras.length + was.extras.length === 0) continue;
    for (const id of new Set([...then.extras, ...was.extras])) {
      const times = timesOf(then, id) - timesOf(was, id);
      if (times !== 0) terms.push({ column: edition.extras.get(id)!, times });
    }
  }
  return terms;
}
