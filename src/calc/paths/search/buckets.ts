import type { State } from '../../choices/state.ts';
import type { Column } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import type { Present } from '../present.ts';
import { candidates, type Space } from './space.ts';
import { type Counted, type Sum, sumOf } from './sums.ts';
import type { Term } from './terms.ts';

/** Pointwise least that something can still add. */
export interface Least {
  readonly money: Column;
  readonly hours: Column;
  readonly out: Column;
}

/** Terms that are settled with one variable, and what else they look at. */
interface Bucket {
  readonly terms: readonly Term[];
  /** Other variables that its terms look at: all settled before it. */
  readonly context: readonly number[];
}

/** One variable in a given (perhaps only partly settled) context: the sums of its options, and their least. */
export interface Contribution {
  readonly sums: ReadonlyMap<number, Sum>;
  readonly least: Least;
}

/** Answers the sums of a search: worked out as they are asked for, and kept. */
export interface Contributions {
  readonly base: Sum;
  readonly buckets: readonly Bucket[];
  /** Variables whose contribution changes when this one is settled. */
  readonly touches: readonly (readonly number[])[];
  readonly of: (variable: number) => Contribution;
}

/** A term that looks at more ways of answering than this is bounded by nothing until more is settled. */
const TOO_MANY = 400;

export function contributionsOf(
  present: Present,
  space: Space,
  order: readonly number[],
  terms: readonly Term[],
  state: State,
  settled: Uint8Array,
): Contributions {
  const { edition, ways } = present;
  const { landed } = ways[0]!;
  const rank = new Int32Array(order.length);
  for (const [place, variable] of order.entries()) rank[variable] = place;
  const last = ({ scope }: Term): number => scope.reduce((a, b) => (rank[b]! > rank[a]! ? b : a), scope[0]!);
  const buckets = space.variables.map((variable, index): Bucket => {
    const own = terms.filter((term) => term.scope.length > 0 && last(term) === index);
    const asking = variable.after.map((at) => space.variableAt[at]!);
    const context = new Set([...own.flatMap(({ scope }) => scope), ...asking]);
    context.delete(index);
    return { terms: own, context: [...context] };
  });
  const lowest = lowestTimes(space, state, settled);
  const sums = new Map<string, Sum>();
  const sumFor = (counted: readonly Counted[]): Sum => {
    const present_ = counted.filter(({ times }) => times !== 0);
    const key = present_.map(({ term, times }) => `${term.id}x${times}`).join(' ');
    const known = sums.get(key) ?? sumOf(edition, landed, present_);
    sums.set(key, known);
    return known;
  };
  const kept: Map<string, Contribution>[] = buckets.map(() => new Map());
  const of = (variable: number): Contribution => {
    const { context, terms: own } = buckets[variable]!;
    const { at } = space.variables[variable]!;
    let key = '';
    for (const other of context)
      key += settled[other] === 1 ? `${state.masks[space.variables[other]!.at]},` : '?,';
    const known = kept[variable]!.get(key);
    if (known) return known;
    const all = stillPossible(space, variable, settled, state);
    const mask = state.masks[at]!;
    const was = settled[variable]!;
    settled[variable] = 1;
    const options = new Map<number, Sum>();
    for (const each of all) {
      state.masks[at] = each;
      options.set(each, sumFor(own.map((term) => ({ term, times: lowest(term) }))));
    }
    state.masks[at] = mask;
    settled[variable] = was;
    const made = { sums: options, least: leastOf([...options.values()]) };
    kept[variable]!.set(key, made);
    return made;
  };
  const touches = space.variables.map((_, index) =>
    buckets.flatMap(({ context }, other) => (context.includes(index) ? [other] : [])),
  );
  const base = sumOf(
    edition,
    landed,
    terms.filter(({ scope }) => scope.length === 0).map((term) => ({ term, times: term.times(state) })),
  );
  return { base, buckets, touches, of };
}

/** Bits that a variable may still take: told exactly once everything before it is settled. */
function stillPossible(space: Space, index: number, settled: Uint8Array, state: State): readonly number[] {
  const variable = space.variables[index]!;
  const open = variable.after.some((at) => settled[space.variableAt[at]!] === 0);
  return open ? variable.possible : candidates(space, variable, state);
}

function leastOf(sums: readonly Sum[]): Least {
  const [first, ...rest] = sums;
  if (!first || rest.length === 0) return first ?? NOTHING;
  const least = { money: first.money.slice(), hours: first.hours.slice(), out: first.out.slice() };
  for (const sum of rest) {
    for (const kind of ['money', 'hours', 'out'] as const) lower(least[kind], sum[kind]);
  }
  return least;
}

const empty = new Float64Array(BUILDS);
const NOTHING: Least = { money: empty, hours: empty, out: empty };

function lower(least: Column, values: Column): void {
  for (let build = 0; build < BUILDS; build += 1)
    if (values[build]! < least[build]!) least[build] = values[build]!;
}

/** The least a term can count, over every way of settling what is not settled yet: rules aside, so never too high. */
function lowestTimes(space: Space, state: State, settled: Uint8Array): (term: Term) => number {
  const kept = new Map<Term, Map<string, number>>();
  const { variables } = space;
  const go = (term: Term, from: number): number => {
    const { scope } = term;
    let place = from;
    while (place < scope.length && settled[scope[place]!] === 1) place += 1;
    if (place === scope.length) return term.times(state);
    const index = scope[place]!;
    const { at, possible } = variables[index]!;
    const mask = state.masks[at]!;
    let least = Number.POSITIVE_INFINITY;
    for (const each of possible) {
      state.masks[at] = each;
      least = Math.min(least, go(term, place + 1));
    }
    state.masks[at] = mask;
    return least;
  };
  return (term) => {
    let key = '';
    let ways = 1;
    for (const index of term.scope) {
      const { at, possible } = variables[index]!;
      if (settled[index] === 1) key += `${state.masks[at]},`;
      else {
        key += '?,';
        ways *= possible.length;
      }
    }
    const known = kept.get(term) ?? new Map<string, number>();
    kept.set(term, known);
    const before = known.get(key);
    if (before !== undefined) return before;
    const found = ways > TOO_MANY && term.kind !== 'plain' ? 0 : go(term, 0);
    known.set(key, found);
    return found;
  };
}
