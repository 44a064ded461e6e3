// What an old hand would check in any plan: the order that keeps people whole and the lathe able to make its own parts.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decisionPosition, optionsOf } from '../../src/calc/choices/state.ts';
import type { Path } from '../../src/calc/core/path.ts';
import { planState } from '../../src/calc/cost/ways.ts';
import { machineOf } from '../../src/calc/facts.ts';
import type { PlannedTask } from '../../src/calc/report.ts';
import { planOf } from '../../src/calc/schedule/plan.ts';
import { anyPath } from '../arbitrary.ts';
import { quickly } from '../cases.ts';

const paths = fc.sample(anyPath, { numRuns: quickly(1500), seed: 23 });

function worked(path: Path) {
  const { state } = planState(path, machineOf(path.size, path.facts));
  const { stages } = planOf(state);
  const chosen = (decision: string): string | undefined => {
    const at = decisionPosition(decision);
    return optionsOf(at, state.masks[at]!)[0];
  };
  return { tasks: stages.flatMap((stage) => stage.tasks), chosen };
}

/**
 * Pairs of tasks of a plan that no chain of prerequisites ties together. The printed order alone would not do: it also
 * follows the stages, and somebody who works from "what may I do next" sees only the prerequisites.
 */
function untied(
  tasks: readonly PlannedTask[],
  before: readonly string[],
  after: readonly string[],
): string[] {
  const byId = new Map(tasks.map((task) => [task.id, task]));
  const ancestors = (id: string, found = new Set<string>()): Set<string> => {
    for (const first of byId.get(id)?.after ?? []) {
      if (!found.has(first)) ancestors(first, found.add(first));
    }
    return found;
  };
  return after
    .filter((later) => byId.has(later))
    .flatMap((later) => {
      const first = ancestors(later);
      return before
        .filter((id) => byId.has(id) && !first.has(id))
        .map((id) => `${later} does not wait for ${id}`);
    });
}

test('nothing on the machine moves under power before the stop circuit is proved and the earths are measured', () => {
  const powered = [
    'first-powered-carriage',
    'fit-cross-motor',
    'swap-spindle-motor',
    'fit-motor-tailstock',
    'first-power-on-machine',
  ];
  const wrong = paths.flatMap((path) =>
    untied(worked(path).tasks, ['prove-stop-circuit', 'bond-and-measure-earths', 'alarm-test'], powered),
  );
  expect([...new Set(wrong)]).toEqual([]);
});

test('no cut before the stop test on the machine; soft limits before the search for top speed', () => {
  const wrong = paths.flatMap((path) => {
    const { tasks } = worked(path);
    return [
      ...untied(
        tasks,
        ['first-power-on-machine', 'homing-and-soft-limits'],
        ['air-cut', 'turning-test', 'threading-test', 'drilling-test'],
      ),
      ...untied(tasks, ['homing-and-soft-limits'], ['rapid-search']),
    ];
  });
  expect([...new Set(wrong)]).toEqual([]);
});

test('an only lathe has made all its parts before it comes apart, unless the job is done in stages', () => {
  const wrong = paths.flatMap((path) => {
    const { tasks, chosen } = worked(path);
    if (chosen('which-lathe') === 'spare-lathe' || chosen('order-of-work') === 'in-stages') return [];
    const cutting = tasks.filter((task) => task.lathe === 'cutting').map((task) => task.id);
    return untied(tasks, cutting, ['strip-carriage', 'strip-cross-slide', 'swap-spindle-motor']);
  });
  expect([...new Set(wrong)]).toEqual([]);
});

test('in stages, what a part of the machine needs is made before that part comes apart', () => {
  const wrong = paths.flatMap((path) => {
    const { tasks, chosen } = worked(path);
    if (chosen('which-lathe') === 'spare-lathe') return [];
    return [
      ...untied(tasks, ['carriage-brackets', 'bore-bearing-seats', 'turn-screw-ends'], ['strip-carriage']),
      ...untied(tasks, ['cross-brackets', 'turn-cross-nut', 'make-riser'], ['strip-cross-slide']),
      ...untied(tasks, ['spindle-plate-and-pulley'], ['swap-spindle-motor']),
    ];
  });
  expect([...new Set(wrong)]).toEqual([]);
});

test('the long-lead parts are ordered only after the path is frozen and what decides it is known', () => {
  const deciding = [
    'freeze-the-path',
    'screw-drawings',
    'verify-casting',
    'pc-jitter-test',
    'read-board-input',
  ];
  expect([
    ...new Set(paths.flatMap((path) => untied(worked(path).tasks, deciding, ['order-long-lead']))),
  ]).toEqual([]);
});

test('what stops the machine or keeps people from it is there before the machine has power, and the rest before a cut', () => {
  const wrong = paths.flatMap((path) => {
    const { tasks } = worked(path);
    return [
      ...untied(
        tasks,
        [
          'fit-motor-starter',
          'fit-spindle-brake',
          'fit-power-chuck',
          'operator-panel-build',
          'coolant-leak-test',
        ],
        ['first-power-on-machine'],
      ),
      ...untied(tasks, ['fit-hand-cranks', 'fit-bar-stop', 'set-gang-tools', 'fit-changer'], ['air-cut']),
      ...untied(tasks, ['rehome-each-part', 'settings-for-each-machine'], ['first-real-part']),
    ];
  });
  expect([...new Set(wrong)]).toEqual([]);
});
