// One pair of hands and parcels on their way, in plans small enough to work out on paper.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { PlannedTask } from '../../../src/calc/report.ts';
import type { Network } from '../../../src/calc/schedule/network.ts';
import { lengthOf, spansOut } from '../../../src/calc/schedule/runs.ts';
import { newRun, work, workable } from '../../../src/calc/schedule/worker.ts';
import { quickly } from '../../cases.ts';

interface Small {
  readonly after?: readonly number[];
  readonly weeks: number;
  readonly out?: string;
  /** A parcel that this task waits for: the task that orders it, and its lead in weeks. */
  readonly parcel?: readonly [orderedAfter: number, lead: number];
}

function worked(plan: readonly Small[]) {
  const parcels = plan.flatMap(({ parcel }, at) => (parcel ? [{ at, parcel }] : []));
  const tasks = plan.map(
    ({ out }, at) =>
      ({ id: `t${at}`, lathe: out ? 'out' : 'usable', stage: out ?? 'decide' }) as unknown as PlannedTask,
  );
  const network: Network = {
    tasks,
    before: plan.map(({ after = [], parcel }) => [
      ...new Set([...after, ...(parcel && parcel[0] >= 0 ? [parcel[0]] : [])]),
    ]),
    deliveries: parcels.map(({ at, parcel }, number) => ({
      part: `p${number}`,
      at: number,
      qty: 1,
      orderedAfter: parcel[0],
      needers: [at],
      here: false,
    })),
    waitsFor: plan.map((_, at) => parcels.flatMap((each, number) => (each.at === at ? [number] : []))),
  };
  const run = newRun(network);
  work(
    workable(network),
    Float64Array.from(plan, ({ weeks }) => weeks),
    Float64Array.from(parcels, ({ parcel }) => parcel[1]),
    run,
  );
  return { network, run, start: [...run.start], finish: [...run.finish] };
}

test('while a parcel is on its way other work goes on, and its task is taken up when it comes', () => {
  const { start, finish } = worked([
    { weeks: 1 },
    { weeks: 2, parcel: [0, 3] },
    { weeks: 1.5, after: [0] },
    { weeks: 4, after: [0] },
  ]);
  expect(start).toEqual([0, 6.5, 1, 2.5]);
  expect(finish).toEqual([1, 8.5, 2.5, 6.5]);
});

test('with nothing else to do everything waits, and no longer than for the first parcel', () => {
  const { start } = worked([{ weeks: 1 }, { weeks: 1, parcel: [0, 6] }, { weeks: 1, parcel: [0, 2] }]);
  expect(start).toEqual([0, 7, 3]);
});

test('a parcel of the first day is ordered at once', () => {
  expect(worked([{ weeks: 1, parcel: [-1, 2] }]).start).toEqual([2]);
});

test('out of use is from the first dismantling of a stage to its last, with the wait between', () => {
  const { network, run } = worked([
    { weeks: 1, out: 'carriage-stage' },
    { weeks: 1, out: 'carriage-stage', parcel: [0, 4] },
    { weeks: 2, after: [1] },
    { weeks: 1, after: [2], out: 'commission' },
  ]);
  expect(spansOut(network, run)).toEqual([
    { from: 0, to: 6 },
    { from: 8, to: 9 },
  ]);
  expect(lengthOf(spansOut(network, run))).toBe(7);
});

test('a plan that waits for itself is an author’s mistake', () => {
  expect(() =>
    worked([
      { weeks: 1, after: [1] },
      { weeks: 1, after: [0] },
    ]),
  ).toThrow(/wait for each other/);
});

const anyPlan = fc
  .array(
    fc.record({
      weeks: fc.integer({ min: 0, max: 6 }),
      picks: fc.array(fc.nat(99), { maxLength: 3 }),
      parcel: fc.option(fc.tuple(fc.nat(99), fc.integer({ min: 0, max: 9 })), { nil: undefined }),
    }),
    { minLength: 1, maxLength: 14 },
  )
  .map((drawn) =>
    drawn.map(
      ({ weeks, picks, parcel }, at): Small => ({
        weeks,
        after: at === 0 ? [] : [...new Set(picks.map((pick) => pick % at))],
        ...(parcel ? { parcel: [at === 0 ? -1 : (parcel[0] % (at + 1)) - 1, parcel[1]] as const } : {}),
      }),
    ),
  );

test('laws: one thing at a time, nothing before its time, nobody idle while something can be done', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const { network, run } = worked(plan);
      const order = plan
        .map((_, at) => at)
        .sort((a, b) => run.start[a]! - run.start[b]! || run.finish[a]! - run.finish[b]!);
      const startable = (at: number): number =>
        Math.max(
          0,
          ...network.before[at]!.map((first) => run.finish[first]!),
          ...network.waitsFor[at]!.map((number) => run.arrives[number]!),
        );
      for (const [place, at] of order.entries()) {
        const before = place === 0 ? 0 : run.finish[order[place - 1]!]!;
        expect(run.start[at]!).toBeGreaterThanOrEqual(before);
        expect(run.start[at]!).toBeGreaterThanOrEqual(startable(at));
        const soonest = Math.min(...order.slice(place).map(startable));
        expect(run.start[at]!).toBe(Math.max(before, soonest));
      }
    }),
    { numRuns: quickly(500) },
  );
});
