import type { State } from '../../choices/state.ts';
import { decisionPosition } from '../../choices/state.ts';
import { figure } from '../../core/machine.ts';
import type { Path } from '../../core/path.ts';
import type { PriceBook } from '../../core/price-book.ts';
import { BUILDS } from '../../cost/strata.ts';
import { designOf } from '../../design.ts';
import { checkRules } from '../../trade.ts';
import { type Present, presentOf } from '../present.ts';
import { type Contributions, contributionsOf } from './contributions.ts';
import type { Goal } from './descent.ts';
import type { Found, Frontier } from './frontier.ts';
import { allJudgements, type Judgement } from './judgements.ts';
import { type Limit, marginChecks } from './limits.ts';
import { orderOf } from './order.ts';
import { remembered, Waits } from './remembered.ts';
import { type Space, spaceOf } from './space.ts';
import type { Sum } from './sums.ts';
import { termsOf } from './terms.ts';

/** Everything that one search runs on. */
export interface Task {
  readonly present: Present;
  readonly space: Space;
  readonly state: State;
  readonly settled: Uint8Array;
  readonly order: readonly number[];
  readonly contributions: Contributions;
  readonly judgements: readonly Judgement[];
  /** Limits on sums, in dollars, hours and weeks. */
  readonly limits: { readonly money?: number; readonly hours?: number; readonly weeks?: number };
  readonly perWeek: number;
  /** What an option weighs when the likelier ones are tried first. */
  readonly weight: (sum: Sum, goal: Goal) => number;
  readonly take: (frontier: Frontier, found: Found, goal: Goal) => void;
}

/** The path with the largest drill and its material as the limits want them. */
export function pathFor(path: Path, limits: readonly Limit[]): Path {
  const drill = limits.find((limit) => limit.kind === 'drill');
  if (drill?.kind !== 'drill') return path;
  const materials = [...new Set([...(path.answers.materials ?? []), drill.material])];
  return {
    ...path,
    facts: { ...path.facts, 'largest-drill': drill.diameter },
    answers: { ...path.answers, materials },
  };
}

/** A state of its own on the planned answers, in which figures of the design are remembered. */
function stateFor({ planned }: Present, space: Space, settled: Uint8Array): State {
  const figures = new Map<string, () => number | Waits>();
  const state: State = {
    ...planned.state,
    masks: planned.state.masks.slice(),
    measure: (id) => {
      const known =
        figures.get(id) ??
        remembered(
          { state, variableAt: space.variableAt, settled },
          (look) => look.figure(id)?.value ?? Number.NaN,
        );
      figures.set(id, known);
      const value = known();
      return value instanceof Waits ? Number.NaN : value;
    },
  };
  return state;
}

/** Positions of the questions that the checks with a margin look at as the path stands. */
function lookedAt(state: State): Set<number> {
  const looked = new Set<number>();
  for (const { rule } of checkRules) {
    const read = new Set<number>();
    const check = rule(designOf(state, (decision) => read.add(decisionPosition(decision))));
    if (check && marginChecks.includes(check.id)) for (const at of read) looked.add(at);
  }
  return looked;
}

export function taskOf(path: Path, book: PriceBook, free: readonly string[], limits: readonly Limit[]): Task {
  const present = presentOf(pathFor(path, limits), book);
  const space = spaceOf(present, free);
  const settled = new Uint8Array(space.variables.length);
  const state = stateFor(present, space, settled);
  const looked = lookedAt(state);
  for (const { at } of space.variables) state.masks[at] = 0;
  const terms = termsOf(present, space, state);
  const order = orderOf(space, terms, looked);
  const most = (kind: 'money' | 'hours' | 'weeks'): number | undefined =>
    limits.reduce<number | undefined>(
      (least, limit) => (limit.kind === kind ? Math.min(least ?? Infinity, limit.most) : least),
      undefined,
    );
  const [money, hours, weeks] = [most('money'), most('hours'), most('weeks')];
  return {
    present,
    space,
    state,
    settled,
    order,
    contributions: contributionsOf({
      present,
      space,
      order,
      terms,
      state,
      settled,
      withOut: weeks !== undefined,
    }),
    judgements: allJudgements({ state, variableAt: space.variableAt, settled }, limits),
    limits: {
      ...(money === undefined ? {} : { money }),
      ...(hours === undefined ? {} : { hours }),
      ...(weeks === undefined ? {} : { weeks }),
    },
    perWeek: figure(present.machine, 'hours-per-week'),
    weight: weightOf,
    take,
  };
}

const means = new WeakMap<Sum, { money: number; hours: number }>();

function meanOf(sum: Sum): { money: number; hours: number } {
  const known = means.get(sum);
  if (known) return known;
  let money = 0;
  let hours = 0;
  for (let build = 0; build < BUILDS; build += 1) {
    money += sum.money[build]!;
    hours += sum.hours[build]!;
  }
  const made = { money, hours };
  means.set(sum, made);
  return made;
}

/** An hour weighs ten dollars where both count; it only orders what is tried, and enters no result. */
function weightOf(sum: Sum, goal: Goal): number {
  const { money, hours } = meanOf(sum);
  if (goal === 'cheapest') return money;
  return goal === 'quickest' ? hours : money + 10 * hours;
}

/** Keeps a way found: all that nothing beats, or only the best of one kind. */
function take(frontier: Frontier, found: Found, goal: Goal): void {
  if (goal === 'frontier' || frontier.ways.length === 0) {
    frontier.add(found);
    return;
  }
  const best = frontier.ways[0]!.figures;
  const { figures } = found;
  const better =
    goal === 'cheapest'
      ? isLess([figures.money, figures.hours], [best.money, best.hours])
      : figures.hours < best.hours;
  if (better) frontier.ways[0] = found;
}

const isLess = (a: readonly [number, number], b: readonly [number, number]): boolean =>
  a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]);
