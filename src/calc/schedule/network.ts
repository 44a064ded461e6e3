import type { State } from '../choices/state.ts';
import type { Path } from '../core/path.ts';
import type { PriceBook } from '../core/price-book.ts';
import { wantedOf } from '../cost/wanted.ts';
import type { PlannedTask } from '../report.ts';
import { parts } from '../trade.ts';
import { needersOf } from './needed-by.ts';
import { planOf } from './plan.ts';
import { roundsOf, withAncestors } from './rounds.ts';

/** From this likely lead a part is ordered with the screws and motors; common practice, no source. */
const LONG_LEAD_DAYS = 10;

/** A part of the bill on its way: ordered when a task is over, waited for by others. Positions are places in `tasks`. */
export interface Delivery {
  readonly part: string;
  /** Position in the trade's list of parts. */
  readonly at: number;
  /** Task whose end sends the order; -1: ordered on the first day. */
  readonly orderedAfter: number;
  /** Tasks that cannot start without it, the first needed at the front. */
  readonly needers: readonly number[];
  /** Already in the drawer, or arrived: nobody waits for it. */
  readonly here: boolean;
}

/** A plan as one person works it: tasks in order of preference, what each waits for, and what has to arrive. */
export interface Network {
  readonly tasks: readonly PlannedTask[];
  readonly before: readonly (readonly number[])[];
  readonly deliveries: readonly Delivery[];
  /** Deliveries that each task waits for, as positions in `deliveries`. */
  readonly waitsFor: readonly (readonly number[])[];
}

const inspected = new Set(parts.filter((part) => part.inspect).map((part) => part.id));
const arrivedStates: readonly string[] = ['arrived', 'checked'];

interface Layout {
  readonly tasks: readonly PlannedTask[];
  readonly place: ReadonlyMap<string, number>;
  readonly roundOf: readonly number[];
  /** The task that opens each round, by place; -1 for the first. */
  readonly opens: readonly number[];
  /** For each ordering task and for freezing the path: what comes after it. */
  readonly comesAfter: (id: string, later: number) => boolean;
}

function layoutOf(state: State): Layout {
  const rounds = roundsOf(planOf(state).stages.flatMap((stage) => stage.tasks));
  const tasks = rounds.flatMap((round) => round.tasks);
  const place = new Map(tasks.map((task, at) => [task.id, at]));
  const before = new Map(tasks.map((task) => [task.id, task.after]));
  const ancestors = tasks.map(({ id }) => withAncestors([id], before));
  return {
    tasks,
    place,
    roundOf: rounds.flatMap((round, number) => round.tasks.map(() => number)),
    opens: rounds.map(({ opens }) => (opens === undefined ? -1 : place.get(opens)!)),
    comesAfter: (id, later) => ancestors[later]!.has(id) && tasks[later]!.id !== id,
  };
}

/** Which task sends the order for a part: the opening of a later round, the orders of the plan, or the first day. */
function orderPoint(layout: Layout, needers: readonly number[], likelyLead: number): number {
  const round = Math.min(...needers.map((at) => layout.roundOf[at]!));
  if (round > 0) return layout.opens[round]!;
  const usual = likelyLead >= LONG_LEAD_DAYS ? 'order-long-lead' : 'order-short-lead';
  const point = [usual, 'freeze-the-path'].find((id) =>
    needers.every((needer) => layout.comesAfter(id, needer)),
  );
  return point === undefined ? -1 : layout.place.get(point)!;
}

/** Owned, or arrived by what the owner says of the purchase. */
const isHere = (path: Path, part: string): boolean =>
  path.owned.includes(part) || arrivedStates.includes(path.purchases?.[part]?.state ?? 'need');

function deliveriesOf(layout: Layout, state: State, path: Path, book: PriceBook): Delivery[] {
  const wanted = wantedOf(state, state.machine, book);
  const inPlan = new Set(layout.place.keys());
  return parts.flatMap((part, at) => {
    if (wanted[at]!.need === 0 || part.yearly) return [];
    const needers = needersOf(part.id, inPlan)
      .map((id) => layout.place.get(id)!)
      .sort((a, b) => a - b);
    const orderedAfter = orderPoint(layout, needers, book.parts[part.id]!.leadDays[1]);
    return [{ part: part.id, at, orderedAfter, needers, here: isHere(path, part.id) }];
  });
}

/**
 * Which deliveries a task waits for besides its own parts. The inspection waits for everything that is measured on
 * arrival and ordered before it. A task that takes the lathe out of use waits for all parts of its stage, so that the
 * lathe is never apart for want of a bearing.
 */
function waitingOf(layout: Layout, deliveries: readonly Delivery[]): number[][] {
  const { tasks, roundOf } = layout;
  return tasks.map((task, at) =>
    deliveries.flatMap((delivery, number) => {
      if (delivery.here) return [];
      const own = delivery.needers.includes(at);
      const inSpection =
        task.id === 'incoming-inspection' && inspected.has(delivery.part) && delivery.orderedAfter < at;
      const ofStage =
        task.lathe === 'out' &&
        delivery.needers.some((needer) => tasks[needer]!.stage === task.stage) &&
        Math.min(...delivery.needers.map((needer) => roundOf[needer]!)) <= roundOf[at]!;
      return own || inSpection || ofStage ? [number] : [];
    }),
  );
}

/** The network of one set of choices. */
export function networkOf(state: State, path: Path, book: PriceBook): Network {
  const layout = layoutOf(state);
  const deliveries = deliveriesOf(layout, state, path, book);
  const waitsFor = waitingOf(layout, deliveries);
  const before = layout.tasks.map((task, at) => [
    ...new Set([
      ...task.after.map((id) => layout.place.get(id)!),
      ...waitsFor[at]!.map((number) => deliveries[number]!.orderedAfter).filter((place) => place >= 0),
    ]),
  ]);
  return { tasks: layout.tasks, before, deliveries, waitsFor };
}
