import type { Exclusion } from '../../choices/exclusions.ts';
import type { Column } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import { shift } from './bounds.ts';
import { type Contribution, type Kind, kinds, type Least } from './contributions.ts';
import type { Goal } from './descent.ts';
import { ENOUGH } from './limits.ts';
import type { Sum } from './sums.ts';
import type { Task } from './task.ts';

/** One level of the tree: a question, the options still to be tried, and the bound with the present one. */
export interface Depth {
  /** Memory of this level; `bound` may be that of a level above where nothing changed. */
  readonly own: Record<Kind, Column>;
  readonly bound: Record<Kind, Column>;
  values: readonly number[];
  next: number;
  margin: number;
  /** Contributions as they were before, to be put back. */
  undo: { readonly variable: number; readonly was: Contribution }[];
  /** Positions that judgements were moved to. */
  moved: number[];
}

export function newDepth(root: Least): Depth {
  const column = (): Column => new Float64Array(BUILDS);
  return {
    own: { money: column(), hours: column(), out: column() },
    bound: { ...root },
    values: [],
    next: 0,
    margin: ENOUGH,
    undo: [],
    moved: [],
  };
}

/** Part of the tree that lies behind: options done at each level, each an equal share of the one above. */
export function shareDone(depths: readonly Depth[], depth: number): number {
  let share = 0;
  let of = 1;
  for (let at = 0; at <= depth; at += 1) {
    const { values, next } = depths[at]!;
    of /= Math.max(1, values.length);
    share += of * (at === depth ? next : next - 1);
  }
  return share;
}

/** What takes another's place in a bound. */
export interface Swap {
  readonly plus: Least;
  readonly minus: Least;
}

/** The bound of a level: the one above with some contributions swapped; the same column where nothing changes. */
export function swapped(above: Column, own: Column, swaps: readonly Swap[], kind: Kind): Column {
  let from = above;
  for (const { plus, minus } of swaps) {
    if (plus[kind] === minus[kind]) continue;
    shift(own, from, plus[kind], minus[kind]);
    from = own;
  }
  return from;
}

/** The bound before anything is settled. */
export function rootBound(base: Sum, now: readonly Contribution[]): Record<Kind, Column> {
  const bound = { money: base.money.slice(), hours: base.hours.slice(), out: base.out.slice() };
  for (const { least } of now) {
    for (const kind of kinds) add(bound[kind], least[kind]);
  }
  return bound;
}

function add(to: Column, values: Column): void {
  for (let build = 0; build < BUILDS; build += 1) to[build]! += values[build]!;
}

/** Exclusions by the depth at which the last of their questions is settled. */
export function byDepth({ space, order }: Task): Exclusion[][] {
  const rank = new Int32Array(space.variables.length);
  for (const [depth, index] of order.entries()) rank[index] = depth;
  const by: Exclusion[][] = order.map(() => []);
  for (const exclusion of space.exclusions) {
    const indexes = exclusion.involved.map((at) => space.variableAt[at]!).filter((index) => index >= 0);
    if (indexes.length > 0) by[Math.max(...indexes.map((index) => rank[index]!))]!.push(exclusion);
  }
  return by;
}

/** Totals that decide something for this goal under these limits. */
export const kindsFor = ({ limits }: Task, goal: Goal): Kind[] =>
  kinds.filter((kind) => {
    if (kind === 'out') return limits.weeks !== undefined;
    if (goal === 'frontier') return true;
    return kind === 'money'
      ? goal === 'cheapest' || limits.money !== undefined
      : goal === 'quickest' || limits.hours !== undefined;
  });
