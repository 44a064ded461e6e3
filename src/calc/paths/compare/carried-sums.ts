import type { State } from '../../choices/state.ts';
import { addTerms, type Term } from '../../cost/columns.ts';
import type { Column, Edition } from '../../cost/edition.ts';
import { landedOf } from '../../cost/landed.ts';
import { BUILDS } from '../../cost/strata.ts';
import { workAt } from '../../schedule/work.ts';
import { parts, risks, tasks } from '../../trade.ts';
import { type Counting, strikesAt, unitsAt } from '../counting.ts';
import { type Again, looked, timesOf } from '../deltas.ts';
import { measured, readsOf } from '../looks-at.ts';

/** Which of the sums are no longer what they were. */
export interface Moved {
  readonly money: boolean;
  readonly hours: boolean;
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

/** What parts add: goods with freight on top, and what bears none: bought near by, and credits. */
interface Bought {
  readonly goods: Term[];
  readonly plain: Term[];
}

/** Counts the parts again; notes what their columns count more or less. */
function countParts(again: readonly number[], counts: Counts, counting: Counting, edition: Edition): Bought {
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
function countWork(again: readonly number[], counts: Counts, state: State, edition: Edition): Term[] {
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

/** Adds what a risk costs in the builds that it strikes only afterwards, or takes it off those it no longer strikes. */
function strike(sum: Column, order: Uint16Array, size: Column, was: number, then: number): void {
  const sign = then > was ? 1 : -1;
  const end = Math.max(was, then);
  for (let place = Math.min(was, then); place < end; place += 1) sum[order[place]!]! += sign * size[place]!;
}

const column = (): Column => new Float64Array(BUILDS);

/**
 * Money and hours of one plan in every build, carried from plan to plan of the same lathe, drawer and prices by what
 * differs. The state given is its own from then on. No orders and no flat allowance may stand.
 */
export class CarriedSums {
  readonly #counting: Counting;
  readonly #edition: Edition;
  readonly #counts: Counts;
  readonly #goods = column();
  /** Money that bears no freight. */
  readonly #rest = column();
  readonly #hours = column();
  #landed: Column;

  constructor(counting: Counting, edition: Edition) {
    const { state, path } = counting;
    this.#counting = counting;
    this.#edition = edition;
    this.#counts = {
      units: parts.map(() => 0),
      work: tasks.map(() => NO_WORK),
      strikes: risks.map(() => NO_STRIKES),
      reads: measured.map(({ measure }) => readsOf(measure, state)),
    };
    this.#landed = landedOf(state, path, edition).landed;
    this.#count(EVERYTHING);
  }

  /** Goes to the plan with these choices. */
  moveTo(masks: Int32Array): Moved {
    const { state, path } = this.#counting;
    const changed: number[] = [];
    for (let at = 0; at < masks.length; at += 1) if (masks[at] !== state.masks[at]) changed.push(at);
    if (changed.length === 0) return { money: false, hours: false };
    const { reads } = this.#counts;
    // A figure that read none of what changed cannot have moved, and reads the same again.
    const again = looked(this.#counts, changed);
    state.masks.set(masks);
    for (const [at, { measure }] of measured.entries()) {
      if (changed.some((position) => reads[at]!.has(position))) reads[at] = readsOf(measure, state);
    }
    const moved = this.#count(again);
    const before = this.#landed;
    this.#landed = landedOf(state, path, this.#edition).landed;
    return { money: moved.money || this.#landed !== before, hours: moved.hours };
  }

  /** Cents with freight, tax and duty of builds `from` to `to`. */
  fillMoney(money: Column, from: number, to: number): void {
    const [goods, rest, landed] = [this.#goods, this.#rest, this.#landed];
    for (let build = from; build < to; build += 1) {
      money[build] = goods[build]! + Math.round(goods[build]! * landed[build]!) + rest[build]!;
    }
  }

  /** Hundredths of an hour of builds `from` to `to`. */
  fillHours(hours: Column, from: number, to: number): void {
    hours.set(this.#hours.subarray(from, to), from);
  }

  #count(again: Again): Moved {
    const { goods, plain } = countParts(again.parts, this.#counts, this.#counting, this.#edition);
    const work = countWork(again.tasks, this.#counts, this.#counting.state, this.#edition);
    addTerms(this.#goods, goods);
    addTerms(this.#rest, plain);
    addTerms(this.#hours, work);
    const struck = this.#countRisks(again.risks);
    return {
      money: struck.money || goods.length + plain.length > 0,
      hours: struck.hours || work.length > 0,
    };
  }

  #countRisks(again: readonly number[]): Moved {
    const moved = { money: false, hours: false };
    for (const at of again) {
      const was = this.#counts.strikes[at]!;
      const then = strikesAt(at, this.#counting);
      this.#counts.strikes[at] = then;
      const { order, money, hours } = this.#edition.risks[at]!;
      if (then.paid !== was.paid) strike(this.#rest, order, money, was.paid, then.paid);
      if (then.builds !== was.builds) strike(this.#hours, order, hours, was.builds, then.builds);
      moved.money ||= then.paid !== was.paid;
      moved.hours ||= then.builds !== was.builds;
    }
    return moved;
  }
}
