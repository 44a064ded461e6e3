import type { Network } from './network.ts';

/** One run through a plan, weeks from its start: when each task starts and ends, when each delivery is ordered and comes. */
export interface Run {
  readonly start: Float64Array;
  readonly finish: Float64Array;
  readonly ordered: Float64Array;
  readonly arrives: Float64Array;
}

export const newRun = ({ tasks, deliveries }: Network): Run => ({
  start: new Float64Array(tasks.length),
  finish: new Float64Array(tasks.length),
  ordered: new Float64Array(deliveries.length),
  arrives: new Float64Array(deliveries.length),
});

/** A network with what the worker looks up at every step laid out flat. */
export interface Workable {
  readonly network: Network;
  readonly followers: readonly (readonly number[])[];
  /** Deliveries that a task orders when it ends; the last list holds those ordered on the first day. */
  readonly orders: readonly (readonly number[])[];
}

export function workable(network: Network): Workable {
  const { tasks, before, deliveries } = network;
  const followers: number[][] = tasks.map(() => []);
  for (const [at, firsts] of before.entries()) for (const first of firsts) followers[first]!.push(at);
  const orders: number[][] = [...tasks.map((): number[] => []), []];
  for (const [number, { orderedAfter }] of deliveries.entries())
    orders[orderedAfter < 0 ? tasks.length : orderedAfter]!.push(number);
  return { network, followers, orders };
}

/** When the parts of a task are all there; weeks. */
function partsAt(waits: readonly number[], arrives: Float64Array): number {
  let latest = 0;
  for (let at = 0; at < waits.length; at += 1) latest = Math.max(latest, arrives[waits[at]!]!);
  return latest;
}

/**
 * One person works through the plan: of the tasks whose prerequisites are done and whose parts are there, the first in
 * the order of the plan; when there is none, they wait for the next parcel. Durations and leads in weeks. Fills `run`.
 */
export function work(plan: Workable, weeks: Float64Array, leads: Float64Array, run: Run): void {
  const { network, followers, orders } = plan;
  const count = network.tasks.length;
  const left = Int32Array.from(network.before, (firsts) => firsts.length);
  const order = (numbers: readonly number[], now: number): void => {
    for (const number of numbers) {
      run.ordered[number] = now;
      run.arrives[number] = now + leads[number]!;
    }
  };
  order(orders[count]!, 0);
  let now = 0;
  let first = 0;
  for (let done = 0; done < count; done += 1) {
    while (left[first]! < 0) first += 1;
    let next = -1;
    let soonest = Number.POSITIVE_INFINITY;
    for (let at = first; at < count; at += 1) {
      if (left[at] !== 0) continue;
      const there = partsAt(network.waitsFor[at]!, run.arrives);
      if (there < soonest) {
        next = at;
        soonest = there;
      }
      if (there <= now) break;
    }
    if (next < 0) throw new Error('tasks wait for each other or for parts that nobody orders');
    now = Math.max(now, soonest);
    run.start[next] = now;
    now += weeks[next]!;
    run.finish[next] = now;
    left[next] = -1;
    for (const follower of followers[next]!) left[follower]! -= 1;
    order(orders[next]!, now);
  }
}
