import { type Exclusion, isViolated } from '../../choices/exclusions.ts';
import { oneOf } from '../../cost/buckets.ts';
import { breaks, medianAtLeast, type Scale, scaleFor } from './bounds.ts';
import type { Contribution, Kind, Least } from './contributions.ts';
import {
  byDepth,
  type Depth,
  kindsFor,
  newDepth,
  rootBound,
  type Swap,
  shareDone,
  swapped,
} from './depths.ts';
import { figuresOf, type WayFigures } from './figures.ts';
import type { Frontier } from './frontier.ts';
import { ENOUGH } from './limits.ts';
import { Waits } from './remembered.ts';
import { candidates } from './space.ts';
import type { Task } from './task.ts';

/** What is looked for: all that nothing beats, the cheapest, the quickest, or whether there is any. */
export type Goal = 'frontier' | 'cheapest' | 'quickest' | 'any';

/** How far a search has come. `share` is the part of the tree that is done, fraction of one. */
export interface Counts {
  readonly nodes: number;
  readonly leaves: number;
  readonly share: number;
}

const CENT = 1;
const HUNDREDTHS = 100;
const CRUMB = 1e-3;
const PAUSE = 100;

/**
 * One way down and up the tree of a task: a question is settled after the other, and it turns back as soon as a rule, a
 * limit or a way found already shows that nothing below can matter.
 */
export class Descent {
  private readonly task: Task;
  private readonly goal: Goal;
  private readonly frontier: Frontier;
  /** Judgements by the position that they wait on. */
  private readonly watch: number[][];
  private readonly now: Contribution[];
  private readonly root: Least;
  private readonly scale: { readonly money: Scale; readonly hours: Scale };
  private readonly exclusionsAt: readonly (readonly Exclusion[])[];
  private readonly used: readonly Kind[];
  private readonly depths: readonly Depth[];
  private rootMargin = ENOUGH;
  private nodes = 0;
  private leaves = 0;

  constructor(task: Task, goal: Goal, frontier: Frontier) {
    this.task = task;
    this.goal = goal;
    this.frontier = frontier;
    this.watch = Array.from(task.space.variableAt, () => []);
    this.now = task.space.variables.map((_, index) => task.contributions.of(index));
    this.root = rootBound(task.contributions.base, this.now);
    this.scale = { money: scaleFor(this.root.money, 3), hours: scaleFor(this.root.hours, 3) };
    this.exclusionsAt = byDepth(task);
    this.used = kindsFor(task, goal);
    this.depths = task.order.map(() => newDepth(this.root));
  }

  /** Goes through the tree. Yields now and then, and after each way worked out, so that whoever runs it can stop. */
  *run(): Generator<Counts, Counts> {
    const { depths } = this;
    if (!this.judgeRoot()) return this.counts(1);
    if (depths.length === 0) {
      this.leaf();
      return this.counts(1);
    }
    let depth = 0;
    let told = 0;
    this.open(0);
    while (depth >= 0) {
      if (this.nodes % PAUSE === 0 || this.leaves > told) {
        told = this.leaves;
        yield this.counts(shareDone(depths, depth));
      }
      depth = this.step(depth);
    }
    return this.counts(1);
  }

  private counts(share: number): Counts {
    return { nodes: this.nodes, leaves: this.leaves, share };
  }

  /** Tries the next option of a level; the level to go on with. */
  private step(depth: number): number {
    const here = this.depths[depth]!;
    if (here.next >= here.values.length) {
      if (depth > 0) this.leave(depth - 1);
      return depth - 1;
    }
    const value = here.values[here.next]!;
    here.next += 1;
    if (this.enter(depth, value)) {
      if (depth + 1 < this.depths.length) {
        this.open(depth + 1);
        return depth + 1;
      }
      this.leaf();
    }
    this.leave(depth);
    return depth;
  }

  /** Judges what hangs on nothing that may change; false where that alone forbids every way. */
  private judgeRoot(): boolean {
    for (const [index, judge] of this.task.judgements.entries()) {
      const said = judge();
      if (said instanceof Waits) this.watch[said.on]!.push(index);
      else if (!said.allowed) return false;
      else this.rootMargin = Math.min(this.rootMargin, said.margin);
    }
    return true;
  }

  /** The options of a level, likelier ones first. */
  private open(depth: number): void {
    const { order, space, state, weight } = this.task;
    const index = order[depth]!;
    const options = candidates(space, space.variables[index]!, state);
    const { sums } = this.now[index]!;
    const weigh = (mask: number): number => weight(sums.get(mask)!, this.goal);
    const here = this.depths[depth]!;
    here.values = options.length < 2 ? options : [...options].sort((a, b) => weigh(a) - weigh(b));
    here.next = 0;
  }

  /** Settles a value; false where nothing below can matter. Whatever it did is put back by `leave`. */
  private enter(depth: number, value: number): boolean {
    const { order, space, state, settled } = this.task;
    const index = order[depth]!;
    const { at } = space.variables[index]!;
    const here = this.depths[depth]!;
    state.masks[at] = value;
    settled[index] = 1;
    here.margin = this.marginAt(depth);
    this.nodes += 1;
    for (const exclusion of this.exclusionsAt[depth]!) if (isViolated(exclusion, state)) return false;
    if (!this.judge(at, here)) return false;
    this.narrow(depth, index, value);
    return !this.isHopeless(here.bound, here.margin);
  }

  /** Asks again the judgements that waited on a question; false as soon as one forbids. */
  private judge(at: number, here: Depth): boolean {
    for (const judgement of this.watch[at]!) {
      const said = this.task.judgements[judgement]!();
      if (said instanceof Waits) {
        this.watch[said.on]!.push(judgement);
        here.moved.push(said.on);
      } else if (!said.allowed) return false;
      else here.margin = Math.min(here.margin, said.margin);
    }
    return true;
  }

  /** The bound once a value stands: its own sum for the least of its options, and what that moves in others. */
  private narrow(depth: number, index: number, value: number): void {
    const { contributions, settled } = this.task;
    const here = this.depths[depth]!;
    const above = depth === 0 ? this.root : this.depths[depth - 1]!.bound;
    const own = this.now[index]!;
    const swaps: Swap[] = [{ plus: own.sums.get(value)!, minus: own.least }];
    for (const other of contributions.touches[index]!) {
      if (settled[other] === 1) continue;
      const was = this.now[other]!;
      const then = contributions.of(other);
      if (then === was) continue;
      swaps.push({ plus: then.least, minus: was.least });
      here.undo.push({ variable: other, was });
      this.now[other] = then;
    }
    for (const kind of this.used) here.bound[kind] = swapped(above[kind], here.own[kind], swaps, kind);
  }

  private marginAt(depth: number): number {
    return depth === 0 ? this.rootMargin : this.depths[depth - 1]!.margin;
  }

  /** Whether every way below breaks a limit, or is matched by one found already. */
  private isHopeless(bound: Least, margin: number): boolean {
    if (this.breaksLimits(bound)) return true;
    const { frontier, goal, scale } = this;
    if (frontier.ways.length === 0) return false;
    if (goal === 'any') return true;
    const cents = goal === 'quickest' ? Infinity : medianAtLeast(bound.money, scale.money) - CENT;
    const time = goal === 'cheapest' ? Infinity : medianAtLeast(bound.hours, scale.hours);
    return frontier.covers(cents / HUNDREDTHS, time / HUNDREDTHS, goal === 'frontier' ? margin : 0);
  }

  private breaksLimits(bound: Least): boolean {
    const { money, hours, weeks } = this.task.limits;
    if (money !== undefined && breaks(bound.money, money * HUNDREDTHS + CENT)) return true;
    if (hours !== undefined && breaks(bound.hours, hours * HUNDREDTHS + CRUMB)) return true;
    return weeks !== undefined && breaks(bound.out, weeks * HUNDREDTHS * this.task.perWeek + CRUMB);
  }

  private leave(depth: number): void {
    const here = this.depths[depth]!;
    for (const { variable, was } of here.undo) this.now[variable] = was;
    for (let at = here.moved.length - 1; at >= 0; at -= 1) this.watch[here.moved[at]!]!.pop();
    here.undo.length = 0;
    here.moved.length = 0;
    this.task.settled[this.task.order[depth]!] = 0;
  }

  /** Everything is settled: works it out to the cent and keeps it where it is worth keeping. */
  private leaf(): void {
    const { present, state, perWeek, take } = this.task;
    const margin = this.marginAt(this.depths.length);
    if (this.isMatched(margin)) return;
    this.leaves += 1;
    const figures = figuresOf(present, state, perWeek, margin);
    if (this.keepsLimits(figures)) take(this.frontier, { masks: state.masks.slice(), figures }, this.goal);
  }

  /** The last bound told exactly, where so far only its bucket was looked at. */
  private isMatched(margin: number): boolean {
    if (this.goal !== 'frontier' || this.frontier.ways.length === 0) return false;
    const { money, hours } = this.depths.at(-1)?.bound ?? this.root;
    const cents = oneOf(money, 0.5) - CENT;
    return this.frontier.covers(cents / HUNDREDTHS, (oneOf(hours, 0.5) - CRUMB) / HUNDREDTHS, margin);
  }

  private keepsLimits({ moneyP80, hoursP80, weeksP80 }: WayFigures): boolean {
    const { money = Infinity, hours = Infinity, weeks = Infinity } = this.task.limits;
    return moneyP80 <= money && hoursP80 <= hours && weeksP80 <= weeks;
  }
}

/** Runs a descent from its beginning. */
export const descend = (task: Task, goal: Goal, frontier: Frontier): Generator<Counts, Counts> =>
  new Descent(task, goal, frontier).run();
