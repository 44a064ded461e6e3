import { type Exclusion, isViolated } from '../../choices/exclusions.ts';
import type { Column } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import { breaks, medianAtLeast, scaleFor, shift } from './bounds.ts';
import { type Contribution, type Kind, kinds, type Least } from './contributions.ts';
import { figuresOf } from './figures.ts';
import type { Frontier } from './frontier.ts';
import { ENOUGH } from './limits.ts';
import { Waits } from './remembered.ts';
import { candidates } from './space.ts';
import type { Sum } from './sums.ts';
import type { Task } from './task.ts';

/** What is looked for: all that nothing beats, the cheapest, the quickest, or whether there is any. */
export type Goal = 'frontier' | 'cheapest' | 'quickest' | 'any';

/** How far a search has come. `share` is the part of the tree that is done, fraction of one. */
export interface Counts {
  nodes: number;
  leaves: number;
  share: number;
}

const CENT = 1;
const HUNDREDTHS = 100;
const PAUSE = 100;

interface Depth {
  readonly own: Record<Kind, Column>;
  bound: Record<Kind, Column>;
  values: readonly number[];
  next: number;
  margin: number;
  /** Contributions as they were before, to be put back. */
  undo: { variable: number; was: Contribution }[];
  /** Positions that judgements were moved to. */
  moved: number[];
}

/**
 * Goes through the tree of a task: settles one question after the other, and turns back as soon as a rule, a limit or a
 * way found already shows that nothing below can matter. Yields now and then, so that whoever runs it can stop.
 */
export function* descend(task: Task, goal: Goal, frontier: Frontier): Generator<Counts, Counts> {
  const { space, state, settled, contributions, order, judgements, limits } = task;
  const { variables } = space;
  const counts: Counts = { nodes: 0, leaves: 0, share: 0 };
  const watch: number[][] = Array.from(space.variableAt, () => []);
  const now: Contribution[] = variables.map((_, index) => contributions.of(index));
  const root = rootBound(contributions.base, now);
  const scale = { money: scaleFor(root.money, 3), hours: scaleFor(root.hours, 3) };
  const used = kindsFor(task, goal);
  const exclusionsAt = byDepth(task);
  const depths = order.map(() => newDepth(root));

  let rootMargin = ENOUGH;
  for (const [index, judge] of judgements.entries()) {
    const said = judge();
    if (said instanceof Waits) watch[said.on]!.push(index);
    else if (!said.allowed) return counts;
    else rootMargin = Math.min(rootMargin, said.margin);
  }

  const boundAt = (depth: number) => (depth === 0 ? root : depths[depth - 1]!.bound);
  const marginAt = (depth: number) => (depth === 0 ? rootMargin : depths[depth - 1]!.margin);

  const isHopeless = (bound: Least, margin: number): boolean => {
    if (limits.money !== undefined && breaks(bound.money, limits.money * HUNDREDTHS + CENT)) return true;
    if (limits.hours !== undefined && breaks(bound.hours, limits.hours * HUNDREDTHS + 1e-3)) return true;
    if (limits.weeks !== undefined && breaks(bound.out, limits.weeks * HUNDREDTHS * task.perWeek + 1e-3))
      return true;
    if (frontier.ways.length === 0) return false;
    if (goal === 'any') return true;
    const money =
      goal === 'quickest' ? Infinity : (medianAtLeast(bound.money, scale.money) - CENT) / HUNDREDTHS;
    const hours = goal === 'cheapest' ? Infinity : medianAtLeast(bound.hours, scale.hours) / HUNDREDTHS;
    return frontier.covers(money, hours, goal === 'frontier' ? margin : 0);
  };

  /** Settles a value; false where nothing below can matter. Whatever it did is put back by `leave`. */
  const enter = (depth: number, value: number): boolean => {
    const index = order[depth]!;
    const { at } = variables[index]!;
    const here = depths[depth]!;
    state.masks[at] = value;
    settled[index] = 1;
    here.undo.length = 0;
    here.moved.length = 0;
    here.margin = marginAt(depth);
    counts.nodes += 1;
    for (const exclusion of exclusionsAt[depth]!) if (isViolated(exclusion, state)) return false;
    for (const judgement of watch[at]!) {
      const said = judgements[judgement]!();
      if (said instanceof Waits) {
        watch[said.on]!.push(judgement);
        here.moved.push(said.on);
      } else if (!said.allowed) return false;
      else if (said.margin < here.margin) here.margin = said.margin;
    }
    narrow(depth, index, value);
    return !isHopeless(here.bound, here.margin);
  };

  /** The bound once a value stands: its own sum for the least of its options, and what that moves in others. */
  const narrow = (depth: number, index: number, value: number): void => {
    const here = depths[depth]!;
    const above = boundAt(depth);
    const own = now[index]!;
    const sum = own.sums.get(value)!;
    const swaps: { plus: Least; minus: Least }[] = [{ plus: sum, minus: own.least }];
    for (const other of contributions.touches[index]!) {
      if (settled[other] === 1) continue;
      const then = contributions.of(other);
      if (then === now[other]) continue;
      swaps.push({ plus: then.least, minus: now[other]!.least });
      here.undo.push({ variable: other, was: now[other]! });
      now[other] = then;
    }
    for (const kind of used) here.bound[kind] = swapped(above[kind], here.own[kind], swaps, kind);
  };

  const leave = (depth: number): void => {
    const index = order[depth]!;
    const here = depths[depth]!;
    for (const { variable, was } of here.undo) now[variable] = was;
    for (let at = here.moved.length - 1; at >= 0; at -= 1) watch[here.moved[at]!]!.pop();
    here.undo.length = 0;
    here.moved.length = 0;
    settled[index] = 0;
  };

  const values = (depth: number): readonly number[] => {
    const index = order[depth]!;
    const options = candidates(space, variables[index]!, state);
    const { sums } = now[index]!;
    const weight = (mask: number): number => task.weight(sums.get(mask)!, goal);
    return options.length < 2 ? options : [...options].sort((a, b) => weight(a) - weight(b));
  };

  const leaf = (): void => {
    counts.leaves += 1;
    const margin = marginAt(order.length);
    const figures = figuresOf(task.present, state, task.perWeek, margin);
    if (limits.money !== undefined && figures.moneyP80 > limits.money) return;
    if (limits.hours !== undefined && figures.hoursP80 > limits.hours) return;
    if (limits.weeks !== undefined && figures.weeksP80 > limits.weeks) return;
    task.take(frontier, { masks: state.masks.slice(), figures }, goal);
  };

  if (order.length === 0) {
    leaf();
    return { ...counts, share: 1 };
  }
  let depth = 0;
  depths[0]!.values = values(0);
  depths[0]!.next = 0;
  while (depth >= 0) {
    const here = depths[depth]!;
    if (here.next >= here.values.length) {
      depth -= 1;
      if (depth >= 0) leave(depth);
      continue;
    }
    const value = here.values[here.next++]!;
    if (counts.nodes % PAUSE === 0) {
      counts.share = shareDone(depths, depth);
      yield counts;
    }
    if (!enter(depth, value)) leave(depth);
    else if (depth === order.length - 1) {
      leaf();
      leave(depth);
    } else {
      depth += 1;
      depths[depth]!.values = values(depth);
      depths[depth]!.next = 0;
    }
  }
  counts.share = 1;
  return counts;
}

/** Totals that decide something for this goal under these limits. */
const kindsFor = ({ limits }: Task, goal: Goal): Kind[] =>
  kinds.filter((kind) => {
    if (kind === 'out') return limits.weeks !== undefined;
    if (goal === 'frontier') return true;
    return kind === 'money'
      ? goal === 'cheapest' || limits.money !== undefined
      : goal === 'quickest' || limits.hours !== undefined;
  });

/** Part of the tree that lies behind: options done at each level, each an equal share of the one above. */
function shareDone(depths: readonly Depth[], depth: number): number {
  let share = 0;
  let of = 1;
  for (let at = 0; at <= depth; at += 1) {
    const { values, next } = depths[at]!;
    of /= values.length;
    share += of * Math.max(0, next - 1);
  }
  return share;
}

function swapped(
  above: Column,
  own: Column,
  swaps: readonly { plus: Least; minus: Least }[],
  kind: Kind,
): Column {
  let from = above;
  for (const { plus, minus } of swaps) {
    if (plus[kind] === minus[kind]) continue;
    shift(own, from, plus[kind], minus[kind]);
    from = own;
  }
  return from;
}

function rootBound(base: Sum, now: readonly Contribution[]): Record<Kind, Column> {
  const bound = { money: base.money.slice(), hours: base.hours.slice(), out: base.out.slice() };
  for (const { least } of now) {
    for (const kind of kinds)
      for (let build = 0; build < BUILDS; build += 1) bound[kind][build]! += least[kind][build]!;
  }
  return bound;
}

function newDepth(root: Depth['bound']): Depth {
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

/** Exclusions by the depth at which the last of their questions is settled. */
function byDepth({ space, order }: Task): Exclusion[][] {
  const rank = new Int32Array(space.variables.length);
  for (const [depth, index] of order.entries()) rank[index] = depth;
  const by: Exclusion[][] = order.map(() => []);
  for (const exclusion of space.exclusions) {
    const ranks = exclusion.involved.map((at) => space.variableAt[at]!).filter((index) => index >= 0);
    if (ranks.length > 0) by[Math.max(...ranks.map((index) => rank[index]!))]!.push(exclusion);
  }
  return by;
}
