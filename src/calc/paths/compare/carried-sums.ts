import type { State } from '../../choices/state.ts';
import { addTerms, type Term } from '../../cost/columns.ts';
import type { Column, Edition } from '../../cost/edition.ts';
import { landedOf } from '../../cost/landed.ts';
import { BUILDS } from '../../cost/strata.ts';
import { workAt } from '../../schedule/work.ts';
import { parts, risks, tasks } from '../../trade.ts';
import { type Counting, strikesAt, unitsAt } from '../counting.ts';
import { type Again, looked } from '../deltas.ts';
import { measured, readsOf } from '../looks-at.ts';

/** Money and hours of one plan in every build, carried from plan to plan by what differs. */
export interface CarriedSums {
  /** Goes to another plan of the same lathe, drawer and prices; says which of the sums moved. */
  readonly moveTo: (masks: Int32Array) => { readonly money: boolean; readonly hours: boolean };
  /** Cents with freight, tax and duty, and hundredths of an hour, of builds `from` to `to`. */
  readonly fillMoney: (money: Column, from: number, to: number) => void;
  readonly fillHours: (hours: Column, from: number, to: number) => void;
}

type Work = ReturnType<typeof workAt>;
type Strikes = ReturnType<typeof strikesAt>;

/** What was counted on the plan at hand, by position. */
interface Counts {
  readonly units: number[];
  readonly work: Work[];
  readonly strikes: Strikes[];
  readonly reads: ReadonlySet<number>[];
}

const NO_WORK: Work = { times: 0, extras: [], timesExtra: 0 };
const NO_STRIKES: Strikes = { builds: 0, paid: 0 };
const everyPosition = (list: readonly unknown[]): number[] => list.map((_, at) => at);
const EVERYTHING: Again = {
  parts: everyPosition(parts),
  tasks: everyPosition(tasks),
  risks: everyPosition(risks),
};

/** Terms by the sum that they belong to. */
interface Moving {
  readonly goods: Term[];
  /** Money without freight: bought near by, and credits. */
  readonly plain: Term[];
  readonly hours: Term[];
}

/** Counts the parts again; notes what their columns count more or less. */
function countParts(again: readonly number[], counts: Counts, counting: Counting, edition: Edition): Moving {
  const prices = edition.prices(counting.machine.size);
  const moving: Moving = { goods: [], plain: [], hours: [] };
  for (const at of again) {
    const units = unitsAt(at, counting);
    const times = units - counts.units[at]!;
    counts.units[at] = units;
    const { id, credit, yearly } = parts[at]!;
    if (times === 0 || yearly || counting.path.owned.includes(id)) continue;
    const list = credit || edition.local[at] ? moving.plain : moving.goods;
    list.push({ column: prices[at]!, times: credit ? -times : times });
  }
  return moving;
}

function countWork(
  again: readonly number[],
  counts: Counts,
  state: State,
  edition: Edition,
  to: Term[],
): void {
  for (const at of again) {
    const was = counts.work[at]!;
    const then = workAt(at, state);
    counts.work[at] = then;
    if (then.times !== was.times) to.push({ column: edition.hours[at]!, times: then.times - was.times });
    for (const [{ extras, timesExtra }, sign] of [
      [was, -1],
      [then, 1],
    ] as const) {
      for (const id of extras) to.push({ column: edition.extras.get(id)!, times: sign * timesExtra });
    }
  }
}

/** Adds what a risk costs in the builds that it strikes only afterwards, or takes it off those it no longer strikes. */
function strike(sum: Column, order: Uint16Array, size: Column, was: number, then: number): void {
  const sign = then > was ? 1 : -1;
  const end = Math.max(was, then);
  for (let place = Math.min(was, then); place < end; place += 1) sum[order[place]!]! += sign * size[place]!;
}

/** Sums of the plan of a state, which is the sums' own from then on. No orders and no flat allowance may stand. */
export function carriedSums(counting: Counting, edition: Edition): CarriedSums {
  const { state, path } = counting;
  const column = (): Column => new Float64Array(BUILDS);
  const sums = { goods: column(), rest: column(), hours: column() };
  const counts: Counts = {
    units: parts.map(() => 0),
    work: tasks.map(() => NO_WORK),
    strikes: risks.map(() => NO_STRIKES),
    reads: measured.map(({ measure }) => readsOf(measure, state)),
  };

  const countRisks = (again: readonly number[]): { money: boolean; hours: boolean } => {
    const moved = { money: false, hours: false };
    for (const at of again) {
      const was = counts.strikes[at]!;
      const then = strikesAt(at, counting);
      counts.strikes[at] = then;
      const { order, money, hours } = edition.risks[at]!;
      if (then.paid !== was.paid) strike(sums.rest, order, money, was.paid, then.paid);
      if (then.builds !== was.builds) strike(sums.hours, order, hours, was.builds, then.builds);
      moved.money ||= then.paid !== was.paid;
      moved.hours ||= then.builds !== was.builds;
    }
    return moved;
  };

  const count = (again: Again): { money: boolean; hours: boolean } => {
    const moving = countParts(again.parts, counts, counting, edition);
    countWork(again.tasks, counts, state, edition, moving.hours);
    addTerms(sums.goods, moving.goods);
    addTerms(sums.rest, moving.plain);
    addTerms(sums.hours, moving.hours);
    const struck = countRisks(again.risks);
    return {
      money: struck.money || moving.goods.length + moving.plain.length > 0,
      hours: struck.hours || moving.hours.length > 0,
    };
  };

  count(EVERYTHING);
  let { landed } = landedOf(state, path, edition);
  return {
    moveTo: (masks) => {
      const changed: number[] = [];
      for (let at = 0; at < masks.length; at += 1) if (masks[at] !== state.masks[at]) changed.push(at);
      if (changed.length === 0) return { money: false, hours: false };
      const again = looked(counts, changed);
      state.masks.set(masks);
      for (const [at, { measure }] of measured.entries())
        if (changed.some((position) => counts.reads[at]!.has(position)))
          counts.reads[at] = readsOf(measure, state);
      const moved = count(again);
      const before = landed;
      landed = landedOf(state, path, edition).landed;
      return landed === before ? moved : { money: true, hours: moved.hours };
    },
    fillMoney: (money, from, to) => {
      const { goods, rest } = sums;
      const share = landed;
      for (let build = from; build < to; build += 1) {
        money[build] = goods[build]! + Math.round(goods[build]! * share[build]!) + rest[build]!;
      }
    },
    fillHours: (hours, from, to) => {
      hours.set(sums.hours.subarray(from, to), from);
    },
  };
}
