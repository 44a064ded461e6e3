import type { State } from '../../choices/state.ts';
import type { Column } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import type { Present } from '../present.ts';
import { type Bucket, bucketsOf } from './buckets.ts';
import { lowestTimes } from './lowest.ts';
import { candidates, type Space } from './space.ts';
import { type Counted, type Sum, sumOf } from './sums.ts';
import type { Term } from './terms.ts';

export const kinds = ['money', 'hours', 'out'] as const;

/** A total that a search looks at. */
export type Kind = (typeof kinds)[number];

/** The least that something can still add, build by build. */
export type Least = Readonly<Record<Kind, Column>>;

/** One variable in a given, perhaps only partly settled context: the sums of its options, and their least. */
export interface Contribution {
  readonly sums: ReadonlyMap<number, Sum>;
  readonly least: Least;
}

/** The sums of a search: worked out as they are asked for, and kept. */
export interface Contributions {
  readonly base: Sum;
  readonly buckets: readonly Bucket[];
  /** Variables whose contribution may change when this one is settled. */
  readonly touches: readonly (readonly number[])[];
  readonly of: (variable: number) => Contribution;
}

interface Made {
  readonly key: string;
  readonly sum: Sum;
}

/** Makes sums, each once: many contexts ask for the same parts and hours. */
function sumMaker({ edition, ways }: Present, withOut: boolean): (counted: readonly Counted[]) => Made {
  const kept = new Map<string, Made>();
  const { landed } = ways[0]!;
  return (counted) => {
    const real = counted.filter(({ times }) => times !== 0);
    const key = real.map(({ term, times }) => `${term.id}x${times}`).join(' ');
    const known = kept.get(key) ?? { key: String(kept.size), sum: sumOf(edition, landed, real, withOut) };
    kept.set(key, known);
    return known;
  };
}

/** Makes the least of some sums, each once: the same options in another context are the same contribution. */
function leastMaker(): (options: ReadonlyMap<number, Made>) => Contribution {
  const kept = new Map<string, Contribution>();
  return (options) => {
    const key = [...options].map(([mask, { key: sum }]) => `${mask}:${sum}`).join(' ');
    const known = kept.get(key);
    if (known) return known;
    const sums = new Map([...options].map(([mask, { sum }]) => [mask, sum]));
    const made = { sums, least: leastOf([...sums.values()]) };
    kept.set(key, made);
    return made;
  };
}

interface Grounds {
  readonly present: Present;
  readonly space: Space;
  readonly order: readonly number[];
  readonly terms: readonly Term[];
  readonly state: State;
  readonly settled: Uint8Array;
  /** Whether hours out of use decide anything. */
  readonly withOut: boolean;
}

export function contributionsOf(grounds: Grounds): Contributions {
  const { present, space, order, terms, state, settled, withOut } = grounds;
  const buckets = bucketsOf(space, order, terms);
  const lowest = lowestTimes(space, state, settled);
  const [sumFor, contributionFor] = [sumMaker(present, withOut), leastMaker()];
  const kept: Map<string, Contribution>[] = buckets.map(() => new Map());

  const make = (variable: number): Contribution => {
    const { at } = space.variables[variable]!;
    const possible = stillPossible(space, variable, settled, state);
    const [mask, was] = [state.masks[at]!, settled[variable]!];
    settled[variable] = 1;
    const options = new Map<number, Made>();
    for (const each of possible) {
      state.masks[at] = each;
      options.set(each, sumFor(buckets[variable]!.terms.map((term) => ({ term, times: lowest(term) }))));
    }
    state.masks[at] = mask;
    settled[variable] = was;
    return contributionFor(options);
  };

  const of = (variable: number): Contribution => {
    let key = '';
    for (const other of buckets[variable]!.context) {
      key += settled[other] === 1 ? `${state.masks[space.variables[other]!.at]},` : '?';
    }
    const known = kept[variable]!.get(key) ?? make(variable);
    kept[variable]!.set(key, known);
    return known;
  };

  const standing = terms.filter(({ scope }) => scope.length === 0);
  return {
    base: sumFor(standing.map((term) => ({ term, times: term.times(state) }))).sum,
    buckets,
    touches: space.variables.map((_, index) =>
      buckets.flatMap(({ context }, other) => (context.includes(index) ? [other] : [])),
    ),
    of,
  };
}

/** Bits that a variable may still take: told exactly once everything before it is settled. */
function stillPossible(space: Space, index: number, settled: Uint8Array, state: State): readonly number[] {
  const variable = space.variables[index]!;
  const open = variable.after.some((at) => settled[space.variableAt[at]!] === 0);
  return open ? variable.possible : candidates(space, variable, state);
}

const NOTHING = new Float64Array(BUILDS);

function leastOf(sums: readonly Sum[]): Least {
  const [first, ...rest] = sums;
  if (!first) return { money: NOTHING, hours: NOTHING, out: NOTHING };
  if (rest.length === 0) return first;
  const of = (kind: Kind): Column => {
    const others = rest.map((sum) => sum[kind]).filter((column) => column !== first[kind]);
    if (others.length === 0) return first[kind];
    const least = first[kind].slice();
    for (const column of others) lower(least, column);
    return least;
  };
  return { money: of('money'), hours: of('hours'), out: of('out') };
}

function lower(least: Column, values: Column): void {
  for (let build = 0; build < BUILDS; build += 1) {
    const value = values[build]!;
    if (value < least[build]!) least[build] = value;
  }
}
