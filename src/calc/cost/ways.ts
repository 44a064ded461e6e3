import { answerMasks, choose, type Preference, type Status, usual } from '../choices/choose.ts';
import { newState, type State, unchosen } from '../choices/state.ts';
import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import { decisions } from '../guide.ts';
import { measure } from '../measures.ts';
import { BUILDS, shuffled } from './strata.ts';

/** How many ways of answering the open questions stand in the builds. */
export const WAYS = 40;

const buildsInWay = BUILDS / WAYS;

/** A set of choices with the builds that are made on it. */
export interface Way {
  readonly state: State;
  readonly from: number;
  readonly to: number;
}

/** The plan itself: answers, and assumed options for what is open. */
export function planState(path: Path, machine: Machine): { state: State; status: Status[] } {
  const state = newState(machine, measure);
  return { state, status: choose(state, answerMasks(path.answers)) };
}

const isWide = (status: Status, position: number): boolean =>
  (status === 'open' || status === 'clash') && decisions[position]!.open === 'options';

/**
 * The ways that the builds stand on. With every question settled there is one. An open question is spread: its assumed
 * option in half of the ways, the others sharing the rest, so that the range is honest about what is not yet decided.
 */
export const waysOf = (path: Path, plan: Plan, seed: number): Way[] =>
  waysFrom(answerMasks(path.answers), plan, seed);

interface Plan {
  readonly state: State;
  readonly status: readonly Status[];
}

/** The same from the bits of the answers. Ways that try the same options first share one state. */
export function waysFrom(given: Int32Array, plan: Plan, seed: number): Way[] {
  const open = plan.status.flatMap((status, position) => (isWide(status, position) ? [position] : []));
  if (open.length === 0) return [{ state: plan.state, from: 0, to: BUILDS }];
  const picks = new Map(open.map((position) => [position, picksOf(position, seed)]));
  const made = new Map<string, State>();
  return Array.from({ length: WAYS }, (_, way) => {
    const key = open.map((position) => picks.get(position)![way]).join(' ');
    const known = made.get(key);
    const state = known ?? unchosen(plan.state, measure);
    if (!known) choose(state, given, preferring(picks, way));
    made.set(key, state);
    return { state, from: way * buildsInWay, to: (way + 1) * buildsInWay };
  });
}

const preferring =
  (picks: ReadonlyMap<number, readonly number[]>, way: number): Preference =>
  (position) => {
    const pick = picks.get(position)?.[way];
    return pick === undefined ? usual(position) : [pick, ...usual(position)];
  };

/** What an open question is tried with first in a way: its pick where it widens the range, else the assumed option. */
export const firstTried = (position: number, way: number, seed: number): number =>
  decisions[position]!.open === 'options' ? picksOf(position, seed)[way]! : usual(position)[0]!;

const pickCache = new Map<string, readonly number[]>();

/** For each way the option bit to try first, every stratum used once. */
function picksOf(position: number, seed: number): readonly number[] {
  const decision = decisions[position]!;
  const key = `${seed} ${decision.id}`;
  const known = pickCache.get(key);
  if (known) return known;
  const order = usual(position).filter((_, at) => !isIncomplete(position, at));
  const picks = Array.from(shuffled(WAYS, seed, `way ${decision.id}`), (stratum) => pick(order, stratum));
  pickCache.set(key, picks);
  return picks;
}

function isIncomplete(position: number, at: number): boolean {
  const decision = decisions[position]!;
  return decision.options.find((option) => option.id === decision.assume[at])?.incomplete !== undefined;
}

function pick(order: readonly number[], stratum: number): number {
  const half = WAYS / 2;
  if (stratum < half || order.length === 1) return order[0]!;
  return order[1 + Math.floor(((stratum - half) * (order.length - 1)) / half)]!;
}
