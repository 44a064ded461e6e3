import { addTerms } from '../../cost/columns.ts';
import type { Column, Edition, RiskColumns } from '../../cost/edition.ts';
import { landedOf } from '../../cost/landed.ts';
import { BUILDS } from '../../cost/strata.ts';
import { type Counting, strikesAt } from '../counting.ts';
import { type Again, looked } from '../deltas.ts';
import { type Counts, countParts, countWork, EVERYTHING, noCounts, readAgain } from './recount.ts';

/** Which of the sums are no longer what they were. */
export interface Moved {
  readonly money: boolean;
  readonly hours: boolean;
}

/** Builds from the one up to the other, the last left out. */
export interface Builds {
  readonly from: number;
  readonly to: number;
}

/**
 * Adds what a risk costs in the builds that it strikes only afterwards, or takes it off those that it no longer strikes:
 * by its own order when all builds are wanted, build by build for a short range.
 */
function strike(
  sum: Column,
  { order, rank }: RiskColumns,
  size: Column,
  [was, then]: readonly [number, number],
  { from, to }: Builds,
): void {
  const sign = then > was ? 1 : -1;
  const [first, end] = [Math.min(was, then), Math.max(was, then)];
  if (to - from === BUILDS) {
    for (let place = first; place < end; place += 1) sum[order[place]!]! += sign * size[place]!;
    return;
  }
  for (let build = from; build < to; build += 1) {
    const place = rank[build]!;
    if (place >= first && place < end) sum[build]! += sign * size[place]!;
  }
}

/** Room for the sums of all builds, whichever plan each of them is made on. */
export interface Sums {
  readonly goods: Column;
  /** Money that bears no freight. */
  readonly rest: Column;
  readonly hours: Column;
}

export const newSums = (): Sums => ({
  goods: new Float64Array(BUILDS),
  rest: new Float64Array(BUILDS),
  hours: new Float64Array(BUILDS),
});

/**
 * Money and hours of one plan in some builds, carried from plan to plan of the same lathe, drawer and prices by what
 * differs. The state given is its own from then on, and so are these builds of the sums, which begin at nothing. No
 * orders and no flat allowance may stand.
 */
export class CarriedSums {
  readonly #counting: Counting;
  readonly #edition: Edition;
  readonly #builds: Builds;
  readonly #counts: Counts;
  readonly #sums: Sums;
  #landed: Column;

  constructor(
    counting: Counting,
    edition: Edition,
    sums = newSums(),
    builds: Builds = { from: 0, to: BUILDS },
  ) {
    const { state, path } = counting;
    this.#counting = counting;
    this.#edition = edition;
    this.#builds = builds;
    this.#sums = sums;
    this.#counts = noCounts(state);
    this.#landed = landedOf(state, path, edition).landed;
    this.#count(EVERYTHING);
  }

  /** Goes to the plan with these choices. */
  moveTo(masks: Int32Array): Moved {
    const { state, path } = this.#counting;
    const changed: number[] = [];
    for (let at = 0; at < masks.length; at += 1) if (masks[at] !== state.masks[at]) changed.push(at);
    if (changed.length === 0) return { money: false, hours: false };
    // A figure that read none of what changed cannot have moved, and reads the same again.
    const again = looked(this.#counts, changed);
    state.masks.set(masks);
    readAgain(this.#counts, state, changed);
    const moved = this.#count(again);
    const before = this.#landed;
    this.#landed = landedOf(state, path, this.#edition).landed;
    return { money: moved.money || this.#landed !== before, hours: moved.hours };
  }

  /** Cents with freight, tax and duty of some of its builds. */
  fillMoney(money: Column, { from, to }: Builds): void {
    const { goods, rest } = this.#sums;
    const landed = this.#landed;
    for (let build = from; build < to; build += 1) {
      money[build] = goods[build]! + Math.round(goods[build]! * landed[build]!) + rest[build]!;
    }
  }

  /** Hundredths of an hour of some of its builds. */
  fillHours(hours: Column, { from, to }: Builds): void {
    hours.set(this.#sums.hours.subarray(from, to), from);
  }

  #count(again: Again): Moved {
    const { from, to } = this.#builds;
    const { goods, plain } = countParts(again.parts, this.#counts, this.#counting, this.#edition);
    const work = countWork(again.tasks, this.#counts, this.#counting.state, this.#edition);
    addTerms(this.#sums.goods, goods, from, to);
    addTerms(this.#sums.rest, plain, from, to);
    addTerms(this.#sums.hours, work, from, to);
    const struck = this.#countRisks(again.risks);
    return {
      money: struck.money || goods.length + plain.length > 0,
      hours: struck.hours || work.length > 0,
    };
  }

  #countRisks(again: readonly number[]): Moved {
    const { rest, hours } = this.#sums;
    const moved = { money: false, hours: false };
    for (const at of again) {
      const was = this.#counts.strikes[at]!;
      const then = strikesAt(at, this.#counting);
      this.#counts.strikes[at] = then;
      const risk = this.#edition.risks[at]!;
      moved.money ||= then.paid !== was.paid;
      moved.hours ||= then.builds !== was.builds;
      if (then.paid !== was.paid) strike(rest, risk, risk.money, [was.paid, then.paid], this.#builds);
      if (then.builds !== was.builds)
        strike(hours, risk, risk.hours, [was.builds, then.builds], this.#builds);
    }
    return moved;
  }
}
