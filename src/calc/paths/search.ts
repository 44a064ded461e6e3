import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import { countLegal } from './search/count.ts';
import { type Counts, descend, type Goal } from './search/descent.ts';
import { type Found, Frontier } from './search/frontier.ts';
import type { Limit } from './search/limits.ts';
import { smallestRelaxed } from './search/relax.ts';
import { type Task, taskOf } from './search/task.ts';
import { type WayThrough, waysOf } from './search/way.ts';

export type { WayFigures } from './search/figures.ts';
export type { Limit, LimitKind } from './search/limits.ts';
export type { ChangedAnswer, WayThrough } from './search/way.ts';

/** What is searched: questions that may be answered anew, and what a way has to keep to. All else stands as planned. */
export interface Wanted {
  readonly free: readonly string[];
  readonly limits: readonly Limit[];
}

/** How far a search has come. Plain data. */
export interface SearchProgress {
  /** Paths that the rules allow. */
  readonly legal: number;
  /** Part of them that is decided, fraction of one. */
  readonly share: number;
  readonly nodes: number;
  /** The cheapest way found so far, there after the first moments where there is any. */
  readonly cheapest: WayThrough | undefined;
  /** Whether it is proved that no way takes less money than `cheapest`. */
  readonly proved: boolean;
  /** Ways found so far that nothing found yet beats. */
  readonly found: number;
}

/** What a search proves. Plain data. */
export interface WaysThrough {
  readonly legal: number;
  /** Paths worked out one by one, and those decided without: by rules, limits and bounds that hold in every build. */
  readonly visited: number;
  readonly unvisited: number;
  readonly nodes: number;
  /** Every way that no other beats on money, hours and margin, the cheapest first; ways alike in all three once. */
  readonly frontier: readonly WayThrough[];
  readonly cheapest: WayThrough | undefined;
  readonly quickest: WayThrough | undefined;
  readonly stiffest: WayThrough | undefined;
  /** Where there is none: the smallest sets of limits of which one has to give way. */
  readonly relax: readonly (readonly Limit[])[];
}

interface Tally {
  nodes: number;
  visited: number;
}

function* run(task: Task, goal: Goal, frontier: Frontier, tally: Tally): Generator<Counts> {
  let last: Counts = { nodes: 0, leaves: 0, share: 0 };
  const going = descend(task, goal, frontier);
  for (let step = going.next(); ; step = going.next()) {
    last = step.value;
    if (step.done) break;
    yield last;
  }
  tally.nodes += last.nodes;
  tally.visited += last.leaves;
}

/**
 * Finds a way: first the cheapest that keeps to the limits, then every way that no other beats; where there is none,
 * which limits would have to give way. Exact: rules, limits and checks hold for every path, and what is left out is left
 * out by bounds that hold in each of the 2,000 builds. Yields progress every hundred steps and after each way worked out; stop by not going on. Throws
 * where a free question is unknown or takes several answers.
 */
export function* searchWays(
  path: Path,
  book: PriceBook,
  { free, limits }: Wanted,
): Generator<SearchProgress, WaysThrough> {
  const task = taskOf(path, book, free, limits);
  const legal = countOf(task);
  const tally: Tally = { nodes: 0, visited: 0 };
  const first = new Frontier();
  const told = (share: number, frontier: Frontier, proved = true): SearchProgress => ({
    legal,
    share,
    nodes: tally.nodes,
    cheapest: waysOf(task, first.ways)[0],
    proved,
    found: frontier.ways.length,
  });
  for (const _ of run(task, 'cheapest', first, tally)) yield told(0, first, false);
  const frontier = new Frontier();
  for (const found of first.ways) frontier.add(found);
  yield told(0, frontier);
  if (first.ways.length > 0) {
    const all = run(task, 'frontier', frontier, tally);
    for (const { share } of all) yield told(share, frontier);
    return result(task, legal, tally, frontier.ways, []);
  }
  const relaxing = smallestRelaxed(path, book, free, limits);
  for (let step = relaxing.next(); ; step = relaxing.next()) {
    if (step.done) return result(task, legal, tally, [], step.value);
    yield told(1, frontier);
  }
}

function countOf(task: Task): number {
  const legal = countLegal(task.space, task.state);
  for (const { at } of task.space.variables) task.state.masks[at] = 0;
  return legal;
}

function result(
  task: Task,
  legal: number,
  { nodes, visited }: Tally,
  found: readonly Found[],
  relax: Limit[][],
): WaysThrough {
  const frontier = waysOf(task, found);
  const best = (better: (a: WayThrough, b: WayThrough) => boolean): WayThrough | undefined =>
    frontier.reduce<WayThrough | undefined>((a, b) => (a && !better(b, a) ? a : b), undefined);
  const seen = Math.min(visited, legal);
  return {
    legal,
    visited: seen,
    unvisited: legal - seen,
    nodes,
    frontier,
    cheapest: frontier[0],
    quickest: best((a, b) => a.figures.hours < b.figures.hours),
    stiffest: best((a, b) => a.figures.margin > b.figures.margin),
    relax,
  };
}

/** How many ways of answering these questions the rules allow. Throws like the search. */
export const countWays = (path: Path, book: PriceBook, free: readonly string[]): number =>
  countOf(taskOf(path, book, free, []));

/** The whole search at once, for tests and the command line; undefined when `shouldStop` said so. */
export function searchNow(
  path: Path,
  book: PriceBook,
  wanted: Wanted,
  onProgress?: (progress: SearchProgress) => void,
  shouldStop?: () => boolean,
): WaysThrough | undefined {
  const going = searchWays(path, book, wanted);
  for (let step = going.next(); ; step = going.next()) {
    if (step.done) return step.value;
    onProgress?.(step.value);
    if (shouldStop?.()) return undefined;
  }
}

/** Only the cheapest way that keeps to the limits; undefined where there is none. */
export function cheapestWay(path: Path, book: PriceBook, { free, limits }: Wanted): WayThrough | undefined {
  const task = taskOf(path, book, free, limits);
  const found = new Frontier();
  for (const _ of descend(task, 'cheapest', found));
  return waysOf(task, found.ways)[0];
}
