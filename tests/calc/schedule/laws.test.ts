// What holds for the order of work on any path, however the questions are answered: 5,000 of them.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile, type State } from '../../../src/calc/choices/state.ts';
import { addBands, NOTHING } from '../../../src/calc/core/band.ts';
import type { Path } from '../../../src/calc/core/path.ts';
import { planState } from '../../../src/calc/cost/ways.ts';
import { machineOf } from '../../../src/calc/facts.ts';
import type { PlannedTask } from '../../../src/calc/report.ts';
import { networkOf } from '../../../src/calc/schedule/network.ts';
import { hasOtherLathe, planOf } from '../../../src/calc/schedule/plan.ts';
import { lengthOf, spansOut } from '../../../src/calc/schedule/runs.ts';
import { newRun, type Run, work, workable } from '../../../src/calc/schedule/worker.ts';
import { rules } from '../../../src/calc/trade.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { anyPath } from '../../arbitrary.ts';

const inStages = compile({ kind: 'is', decision: 'order-of-work', options: ['in-stages'] });
const gates = rules.flatMap((rule) =>
  rule.then.flatMap((effect) => {
    const when = compile(rule.when);
    if (effect.kind === 'gate') return [{ when, name: effect.gate, of: effect.of, before: effect.before }];
    if (effect.kind !== 'orders') return [];
    return effect.tasks.slice(1).map((later, at) => ({
      when,
      name: rule.id,
      of: [effect.tasks[at]!],
      before: [later],
    }));
  }),
);

interface Worked {
  readonly state: State;
  readonly tasks: readonly PlannedTask[];
  readonly plan: ReturnType<typeof planOf>;
  readonly network: ReturnType<typeof networkOf>;
  readonly run: Run;
}

/** Works the plan of a path once, at the likely hours and leads, six hours a week. */
function workedOut(path: Path): Worked {
  const { state } = planState(path, machineOf(path.size, path.facts));
  const plan = planOf(state);
  const network = networkOf(state, path, currentEdition);
  const run = newRun(network);
  const weeks = Float64Array.from(network.tasks, ({ hours }) => hours[1] / 6);
  const leads = Float64Array.from(
    network.deliveries,
    ({ part }) => currentEdition.parts[part]!.leadDays[1] / 7,
  );
  work(workable(network), weeks, leads, run);
  return { state, plan, network, run, tasks: plan.stages.flatMap((stage) => stage.tasks) };
}

/** Every pair in which the first must be over before the second starts, but is not. */
function early({ network, run }: Worked, first: readonly string[], later: readonly string[]): string[] {
  const at = new Map(network.tasks.map((task, place) => [task.id, place]));
  return later
    .filter((id) => at.has(id))
    .flatMap((id) =>
      first
        .filter((before) => at.has(before) && run.finish[at.get(before)!]! > run.start[at.get(id)!]! + 1e-9)
        .map((before) => `${id} starts before ${before} is done`),
    );
}

const faults = {
  prerequisites: (worked: Worked) => worked.tasks.flatMap((task) => early(worked, task.after, [task.id])),
  'the printed order': ({ plan, tasks }: Worked) => {
    const place = new Map(plan.order.map((id, at) => [id, at]));
    return tasks.flatMap((task) =>
      task.after
        .filter((id) => place.get(id)! >= place.get(task.id)!)
        .map((id) => `${task.id} printed before ${id}`),
    );
  },
  gates: (worked: Worked) =>
    gates.filter((gate) => gate.when(worked.state)).flatMap((gate) => early(worked, gate.of, gate.before)),
  'the stop circuit before power': (worked: Worked) =>
    early(
      worked,
      ['prove-stop-circuit', 'bond-and-measure-earths', 'interim-stop'],
      ['first-powered-carriage', 'servo-first-enable', 'fit-cross-motor', 'first-power-on-machine'],
    ),
  'the make-first hold before what cannot be undone': (worked: Worked) => {
    if (hasOtherLathe(worked.state)) return [];
    const cutting = worked.tasks.filter((task) => task.lathe === 'cutting').map((task) => task.id);
    const final = worked.tasks.filter((task) => task.undo === 'cannot-be-undone' && task.lathe === 'out');
    const waitsForAll = inStages(worked.state)
      ? new Set(['spare-of-each-cross', 'spare-of-each-carriage'])
      : new Set(cutting);
    return final.flatMap((task) =>
      early(
        worked,
        cutting.filter(
          (id) =>
            waitsForAll.has(id) &&
            (!inStages(worked.state) || id.endsWith(task.stage === 'cross-stage' ? 'cross' : 'carriage')),
        ),
        [task.id],
      ),
    );
  },
  'parts in hand': ({ network, run }: Worked) =>
    network.tasks.flatMap(({ id }, at) =>
      network.waitsFor[at]!.filter((number) => run.arrives[number]! > run.start[at]! + 1e-9).map(
        (number) => `${id} starts before ${network.deliveries[number]!.part} has come`,
      ),
    ),
  'hours of stages': ({ plan, tasks }: Worked) => {
    const byStage = plan.stages.reduce((sum, stage) => addBands(sum, stage.hours), NOTHING);
    const byTask = tasks.reduce((sum, task) => addBands(sum, task.hours), NOTHING);
    return byStage.every((hours, end) => Math.abs(hours - byTask[end]!) < 1e-9)
      ? []
      : ['stages and tasks differ'];
  },
  'weeks out of use': ({ network, run }: Worked) => {
    const stages = [
      ...new Set(network.tasks.filter((task) => task.lathe === 'out').map((task) => task.stage)),
    ];
    const stretches = stages.flatMap((stage) => {
      const places = network.tasks.flatMap((task, at) =>
        task.stage === stage && task.lathe === 'out' && run.finish[at]! > run.start[at]! ? [at] : [],
      );
      return places.length === 0
        ? []
        : [
            [
              Math.min(...places.map((at) => run.start[at]!)),
              Math.max(...places.map((at) => run.finish[at]!)),
            ],
          ];
    });
    const edges = [...new Set(stretches.flat())].sort((a, b) => a - b);
    const covered = edges.slice(1).reduce((sum, edge, at) => {
      const [from, to] = [edges[at]!, edge];
      return stretches.some(([a, b]) => a! <= from && to <= b!) ? sum + to - from : sum;
    }, 0);
    return Math.abs(covered - lengthOf(spansOut(network, run))) < 1e-9 ? [] : ['span and sum differ'];
  },
} satisfies Record<string, (worked: Worked) => string[]>;

describe('5,000 random paths', () => {
  const found = new Map<string, Set<string>>(Object.keys(faults).map((law) => [law, new Set()]));
  let irreversible = 0;
  for (const path of fc.sample(anyPath, { numRuns: 5000, seed: 71 })) {
    const worked = workedOut(path);
    irreversible += worked.tasks.filter((task) => task.undo === 'cannot-be-undone').length;
    for (const [law, look] of Object.entries(faults))
      for (const fault of look(worked)) found.get(law)!.add(fault);
  }

  test.each(Object.keys(faults))('%s', (law) => expect([...found.get(law)!]).toEqual([]));

  test('they hold enough that cannot be undone for the laws to bite', () => {
    expect(irreversible).toBeGreaterThan(2000);
  });
});
