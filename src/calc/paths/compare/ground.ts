import { choose } from '../../choices/choose.ts';
import { newState, type State, unchosen } from '../../choices/state.ts';
import type { Path } from '../../core/path.ts';
import type { PriceBook } from '../../core/price-book.ts';
import { editionOf } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import { type Way, waysFrom } from '../../cost/ways.ts';
import { machineOf } from '../../facts.ts';
import { measure } from '../../measures.ts';
import { CarriedSums, type Moved, newSums } from './carried-sums.ts';
import { plansIn, type Typical, typicalOf } from './walk.ts';

/** A lathe with its drawer and prices, on which plans differ by their answers alone. */
export interface Ground {
  /** Plans are chosen here. */
  readonly plan: State;
  readonly path: Path;
  readonly book: PriceBook;
  /** One plan in all builds. */
  readonly whole: CarriedSums;
  /** Each of the ways of answering in its own builds; made when many plans are first wanted at once. */
  apart: readonly CarriedSums[] | undefined;
  /** What the mixture before came to, where it was one plan. */
  last: Typical | undefined;
}

const money = new Float64Array(BUILDS);
const hours = new Float64Array(BUILDS);
/** Up to so many plans, one set of sums goes from plan to plan, which is quicker; of more, each way has its own. */
const FEW = 24;

const countingOn = ({ plan, path, book }: Pick<Ground, 'plan' | 'path' | 'book'>, masks: Int32Array) => {
  const state = unchosen(plan, measure);
  state.masks.set(masks);
  return { state, machine: plan.machine, path, book };
};

export function groundOf(path: Path, book: PriceBook, given: Int32Array): Ground {
  const plan = newState(machineOf(path.size, path.facts), measure);
  choose(plan, given);
  const here = { plan, path, book };
  const whole = new CarriedSums(countingOn(here, plan.masks), editionOf(book));
  return { ...here, whole, apart: undefined, last: undefined };
}

export const waysOn = ({ plan, book }: Ground, given: Int32Array): Way[] =>
  waysFrom(given, { state: plan, status: choose(plan, given) }, book.seed);

/** The builds of a mixture from sums that go from plan to plan; which of them are not those of before. */
function fillInTurn({ whole }: Ground, ways: readonly Way[], again: boolean): Moved {
  let moved: Moved = { money: again, hours: again };
  const byState = new Map<State, Way[]>();
  for (const way of ways) byState.set(way.state, [...(byState.get(way.state) ?? []), way]);
  for (const [state, here] of byState) {
    const step = whole.moveTo(state.masks);
    moved = { money: again || step.money, hours: again || step.hours };
    for (const way of here) {
      if (moved.money) whole.fillMoney(money, way);
      if (moved.hours) whole.fillHours(hours, way);
    }
  }
  return moved;
}

/** The same from sums that each way of answering has for itself. */
function fillApart(ground: Ground, ways: readonly Way[]): void {
  const { book } = ground;
  const sums = ground.apart ? undefined : newSums();
  ground.apart ??= ways.map(
    (way) => new CarriedSums(countingOn(ground, way.state.masks), editionOf(book), sums, way),
  );
  for (const [at, way] of ways.entries()) {
    const own = ground.apart[at]!;
    own.moveTo(way.state.masks);
    own.fillMoney(money, way);
    own.fillHours(hours, way);
  }
}

/** The typical figures of the answers on a ground. */
export function typicalOn(ground: Ground, given: Int32Array): Typical {
  const ways = waysOn(ground, given);
  // Only where one plan follows another does a sum that has not moved still stand for all builds.
  const known = ways.length === 1 ? ground.last : undefined;
  let moved: Moved = { money: true, hours: true };
  if (plansIn(ways) > FEW) fillApart(ground, ways);
  else moved = fillInTurn(ground, ways, known === undefined);
  const typical = {
    money: known && !moved.money ? known.money : typicalOf(money),
    hours: known && !moved.hours ? known.hours : typicalOf(hours),
  };
  ground.last = ways.length === 1 ? typical : undefined;
  return typical;
}
