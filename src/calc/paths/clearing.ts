import { checksOf } from '../checks.ts';
import type { Check, Result } from '../core/check.ts';
import type { Machine } from '../core/machine.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import type { Totals } from '../cost/builds.ts';
import { type Difference, differenceOfBuilds } from '../cost/difference.ts';
import { type Edition, editionOf } from '../cost/edition.ts';
import { ordersOf } from '../cost/orders.ts';
import { totalsOf } from '../cost/totals.ts';
import { wantedOf } from '../cost/wanted.ts';
import { waysOf } from '../cost/ways.ts';
import { designOf } from '../design.ts';
import { machineOf } from '../facts.ts';
import { changesOf, type OneChange, type Planned, plannedOn } from './one-change.ts';

/** One other answer that makes a check better, with what it does to money and hours. Plain data. */
export interface WayToClear {
  readonly decision: string;
  readonly option: string;
  /** Where several may be ticked: whether this one is ticked or unticked. */
  readonly ticked: boolean;
  /** What the check says then; `gone` where it no longer arises. */
  readonly result: Result | 'gone';
  readonly margin: number | undefined;
  /** Whether nothing is left to look at. */
  readonly clears: boolean;
  /** Other checks that get worse by it. */
  readonly worse: readonly string[];
  /** Open questions whose planned answer moves along. */
  readonly follows: readonly string[];
  /** Dollars and hours more than now, in the same builds; below zero: less. */
  readonly money: Difference;
  readonly hours: Difference;
}

const HUNDREDTHS = 100;
/** A margin that grows by less than this share is the same margin. */
const NOTICED = 1.02;

const rank: Readonly<Record<Result | 'gone', number>> = { stop: 0, look: 1, 'not-yet': 1, ok: 2, gone: 2 };

type Judged = ReadonlyMap<string, Check>;

const judged = ({ state }: Planned): Judged =>
  new Map(checksOf(designOf(state)).map((check) => [check.id, check]));

function isBetter(before: Check, after: Check | undefined): boolean {
  if (!after) return true;
  if (after.result === 'not-yet' || after.margin === undefined) return false;
  if (rank[after.result] !== rank[before.result]) return rank[after.result] > rank[before.result];
  return after.margin > (before.margin ?? 0) * NOTICED;
}

/** Checks that say something graver than before, or that arise anew and are not in order. */
function worseIn(before: Judged, after: Judged): string[] {
  return [...after.values()].flatMap(({ id, result }) => {
    const was = before.get(id)?.result ?? 'gone';
    return result !== 'not-yet' && rank[result] < rank[was] && was !== 'not-yet' ? [id] : [];
  });
}

/** The builds of a plan at the prices of a book. */
function buildsOf({ path, state, status }: Planned, machine: Machine, edition: Edition): Totals {
  const plan = { state, status: [...status] };
  const orders = ordersOf(wantedOf(state, machine, edition.book), path, edition);
  return totalsOf(waysOf(path, plan, edition.book.seed), machine, path, edition, orders);
}

/** First what clears, then what makes nothing else worse, then the better result, the lower price, the fewer hours. */
function byUse(a: WayToClear, b: WayToClear): number {
  return (
    Number(b.clears) - Number(a.clears) ||
    Number(a.worse.length > 0) - Number(b.worse.length > 0) ||
    rank[b.result] - rank[a.result] ||
    a.money.p50 - b.money.p50 ||
    a.hours.p50 - b.hours.p50
  );
}

function wayOf(
  change: OneChange,
  after: Check | undefined,
  worse: string[],
  here: Totals,
  there: Totals,
): WayToClear {
  const result = after?.result ?? 'gone';
  return {
    decision: change.decision,
    option: change.option,
    ticked: change.ticked,
    result,
    margin: after?.margin,
    clears: rank[result] === rank.ok,
    worse,
    follows: change.follows,
    money: differenceOfBuilds(here.money, there.money, HUNDREDTHS),
    hours: differenceOfBuilds(here.hours, there.hours, HUNDREDTHS),
  };
}

/**
 * Every single other answer under which a check that says "stop" or "look" gets better, the most useful first, each
 * with its money and hours against the plan as it is, in the same 2,000 builds. Empty where the check does not arise,
 * is in order or still waits for a figure, and where no single answer helps. Throws only on an author's mistake.
 */
export function waysToClear(path: Path, book: PriceBook, checkId: string): WayToClear[] {
  const machine = machineOf(path.size, path.facts);
  const edition = editionOf(book);
  const now = plannedOn(path, machine);
  const before = judged(now);
  const check = before.get(checkId);
  if (!check || (check.result !== 'stop' && check.result !== 'look')) return [];
  const here = buildsOf(now, machine, edition);
  return check.decisions
    .flatMap((decision) => changesOf(now, decision))
    .flatMap((change) => {
      const after = judged(change);
      const then = after.get(checkId);
      if (!isBetter(check, then)) return [];
      return [wayOf(change, then, worseIn(before, after), here, buildsOf(change, machine, edition))];
    })
    .sort(byUse);
}
