import type { Machine } from '../core/machine.ts';
import { fillTotals, newTotals, type Resolved, resolve, type Totals } from '../cost/builds.ts';
import type { Term } from '../cost/columns.ts';
import { type Column, drawBand, type Edition, priceBand } from '../cost/edition.ts';
import { BUILDS } from '../cost/strata.ts';
import { parts, tasks } from '../trade.ts';
import type { Present } from './present.ts';

/** Standard normal score of the tenth and the ninetieth of a hundred. */
export const TENTH = -1.2815515655446004;
export const NINETIETH = -TENTH;

/** One unknown held still while all the others stay as drawn; scores are standard normal. */
export interface Held {
  readonly market?: number;
  readonly pace?: number;
  /** Freight, tax and duty as a share of the goods. */
  readonly landed?: number;
}

const still = (score: number): Float64Array => new Float64Array(BUILDS).fill(score);

/** Columns of an edition drawn again with their shared factor held still, made as they are asked for. */
function redraw(edition: Edition, machine: Machine, { market, pace }: Held): (column: Column) => Column {
  const made = new Map<Column, Column>();
  const how = new Map<Column, () => Column>();
  if (market !== undefined) drawParts(edition, machine, still(market), how);
  if (pace !== undefined) drawWork(edition, still(pace), how);
  return (column) => {
    const draw = how.get(column);
    if (!draw) return column;
    const known = made.get(column) ?? draw();
    made.set(column, known);
    return known;
  };
}

function drawParts(edition: Edition, machine: Machine, shared: Column, how: Map<Column, () => Column>): void {
  const prices = edition.prices(machine.size);
  const factor = edition.book.sizeFactor[machine.size];
  for (const [at, part] of parts.entries()) {
    how.set(prices[at]!, () => {
      const drawn = drawBand(edition.book.seed, `part ${part.id}`, priceBand(edition.book, part.id), shared);
      return part.scaled ? drawn.map((cents) => Math.round(cents * factor)) : drawn;
    });
  }
}

function drawWork(edition: Edition, shared: Column, how: Map<Column, () => Column>): void {
  const { seed } = edition.book;
  for (const [at, task] of tasks.entries()) {
    how.set(edition.hours[at]!, () => drawBand(seed, `task ${task.id}`, task.hours, shared));
    for (const extra of task.extra ?? []) {
      how.set(edition.extras.get(extra.id)!, () => drawBand(seed, `extra ${extra.id}`, extra.hours, shared));
    }
  }
}

/** The totals of a path with one unknown held still. */
export function totalsHeld({ ways, machine, planned, edition, orders }: Present, held: Held): Totals {
  const drawn = redraw(edition, machine, held);
  const anew = (terms: readonly Term[]): Term[] =>
    terms.map(({ column, times }) => ({ column: drawn(column), times }));
  const totals = newTotals();
  for (const { state, from, to } of ways) {
    const way = resolve(state, machine, planned.path, edition, orders);
    const again: Resolved = {
      ...way,
      goods: anew(way.goods),
      local: anew(way.local),
      credits: anew(way.credits),
      work: anew(way.work),
      workOut: anew(way.workOut),
      landed: held.landed === undefined ? way.landed : still(held.landed),
    };
    fillTotals(totals, again, edition, from, to);
  }
  return totals;
}

/** The totals of a path with one risk that strikes in every build, or in none. */
export function totalsStruck(
  { ways, machine, planned, edition, orders }: Present,
  risk: number,
  happens: boolean,
): Totals {
  const totals = newTotals();
  for (const { state, from, to } of ways) {
    const way = resolve(state, machine, planned.path, edition, orders);
    const risks = way.risks.map((each) =>
      each.at === risk ? { ...each, builds: happens ? BUILDS : 0 } : each,
    );
    fillTotals(totals, { ...way, risks }, edition, from, to);
  }
  return totals;
}
