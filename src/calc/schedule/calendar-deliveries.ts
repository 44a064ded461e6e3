import type { PriceBook } from '../core/price-book.ts';
import type { Range } from '../core/range.ts';
import type { Column } from '../cost/edition.ts';
import { BUILDS } from '../cost/strata.ts';
import { parts } from '../trade.ts';
import { dayAtWeek } from './dates.ts';
import type { Network } from './network.ts';
import { rangeOf } from './ranges.ts';
import type { Prepared } from './runs.ts';
import type { Watched } from './watch.ts';

const DAYS_A_WEEK = 7;
const TWENTY = 20;
/** Rounding of sums of weeks. */
const AT_ONCE = 1e-9;

/** A part on its way, weeks from the start. */
export interface DeliveryRow {
  readonly part: string;
  readonly name: string;
  /** The task after which the plan orders it; missing: on the first day. */
  readonly orderedAfter?: string;
  /** The first task that needs it. */
  readonly neededBy: string;
  readonly ordered: Range;
  readonly arrives: Range;
  /** When the first task that waits for it starts, be it the inspection. */
  readonly needed: Range;
  /** Weeks it lies on the shelf before it is needed. */
  readonly spare: Range;
  /** Builds of twenty in which work waits for it and goes on the moment it comes. */
  readonly waitedForOfTwenty: number;
  /** Last week to order it so that its task typically need not wait: at its likely lead, and at a slow one. */
  readonly orderBy: number;
  readonly orderBySlow: number;
  readonly days?: { readonly orderBy: string; readonly orderBySlow: string; readonly needed: string };
}

/** Every part of the bill that has to come, in the order in which it must be ordered. Never before the first day. */
export function deliveryRows(
  prepared: Prepared,
  seen: Watched,
  book: PriceBook,
  firstDay: string | undefined,
): DeliveryRow[] {
  const rows = prepared.network.deliveries.flatMap((delivery, number) =>
    delivery.here || parts[delivery.at]!.credit ? [] : [rowOf(prepared, seen, book, number, firstDay)],
  );
  return rows.sort((a, b) => a.orderBy - b.orderBy || (a.part < b.part ? -1 : 1));
}

/** When the first of the tasks that wait for a delivery starts: the inspection of what arrives, or its own task. */
function firstWanted({ waitsFor }: Network, seen: Watched, number: number): Column {
  const first = new Float64Array(BUILDS).fill(Number.POSITIVE_INFINITY);
  for (let at = 0; at < waitsFor.length; at += 1) {
    if (!waitsFor[at]!.includes(number)) continue;
    const start = seen.start[at]!;
    for (let build = 0; build < BUILDS; build += 1) first[build] = Math.min(first[build]!, start[build]!);
  }
  return first;
}

function rowOf(
  { network }: Prepared,
  seen: Watched,
  book: PriceBook,
  number: number,
  firstDay: string | undefined,
): DeliveryRow {
  const { part, at, needers, orderedAfter } = network.deliveries[number]!;
  const arrives = seen.arrives[number]!;
  const start = firstWanted(network, seen, number);
  const spare = start.map((week, build) => Math.max(0, week - arrives[build]!));
  const waits = spare.reduce((count, weeks) => count + Number(weeks < AT_ONCE), 0);
  const [, likely, slow] = book.parts[part]!.leadDays;
  const needed = rangeOf(start);
  const by = (days: number): number => Math.max(0, needed.p50 - days / DAYS_A_WEEK);
  const day = (week: number): string => dayAtWeek(firstDay!, week);
  return {
    part,
    name: parts[at]!.name,
    ...(orderedAfter < 0 ? {} : { orderedAfter: network.tasks[orderedAfter]!.id }),
    neededBy: network.tasks[needers[0]!]!.id,
    ordered: rangeOf(seen.ordered[number]!),
    arrives: rangeOf(arrives),
    needed,
    spare: rangeOf(spare),
    waitedForOfTwenty: Math.round((TWENTY * waits) / BUILDS),
    orderBy: by(likely),
    orderBySlow: by(slow),
    ...(firstDay === undefined
      ? {}
      : { days: { orderBy: day(by(likely)), orderBySlow: day(by(slow)), needed: day(needed.p50) } }),
  };
}
