// Every part has a task that waits for it, on every path.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { quantities } from '../../../src/calc/cost/bill.ts';
import { planState } from '../../../src/calc/cost/ways.ts';
import { machineOf } from '../../../src/calc/facts.ts';
import { tasksNeeding } from '../../../src/calc/schedule/needed-by.ts';
import { taskHours } from '../../../src/calc/schedule/work.ts';
import { parts, taskIndex } from '../../../src/calc/trade.ts';
import { anyPath } from '../../arbitrary.ts';
import { quickly } from '../../cases.ts';

test('every part that is paid once names its tasks, and every name exists', () => {
  const bare = parts.filter((part) => !part.yearly && !tasksNeeding.has(part.id)).map((part) => part.id);
  expect(bare).toEqual([]);
  const ids = new Set(parts.map((part) => part.id));
  expect([...tasksNeeding.keys()].filter((part) => !ids.has(part))).toEqual([]);
  expect([...tasksNeeding.values()].flat().filter((task) => !taskIndex.has(task))).toEqual([]);
});

test('on 1,500 random paths each line of the bill belongs to a task of the plan', () => {
  const homeless = new Map<string, number>();
  for (const path of fc.sample(anyPath, { numRuns: quickly(1500), seed: 31 })) {
    const machine = machineOf(path.size, path.facts);
    const { state } = planState(path, machine);
    const inPlan = new Set(taskHours(state).map(({ task }) => task.id));
    const bought = quantities(state, machine);
    for (const [at, part] of parts.entries()) {
      if (bought[at]! > 0 && !part.yearly && !tasksNeeding.get(part.id)!.some((task) => inPlan.has(task)))
        homeless.set(part.id, (homeless.get(part.id) ?? 0) + 1);
    }
  }
  expect(Object.fromEntries(homeless)).toEqual({});
});
