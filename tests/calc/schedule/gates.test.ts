// Where the sheet has to stop the reader: before mains work, and before each later stage takes the lathe apart.
import { expect, test } from 'vitest';
import { evaluate, type PlannedTask } from '../../../src/calc/evaluate.ts';
import { laterHolds, stopWorkOf } from '../../../src/calc/stage-notes.ts';
import { workingOf } from '../../../src/calc/working.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';

const orderOf = (path: ReturnType<typeof pathOf>): PlannedTask[] =>
  evaluate(path, currentEdition).stages.flatMap((stage) => stage.tasks);

const atOnce = orderOf(pathOf({}));
const inStages = orderOf(pathOf({ 'order-of-work': 'in-stages' }));

test('the note stands before the first task on mains that is not ticked, and goes with the last', () => {
  const mains = atOnce.filter((task) => task.mains).map((task) => task.id);
  expect(mains.length).toBeGreaterThan(1);
  expect(stopWorkOf(atOnce, { done: {} })?.before).toBe(mains[0]);
  expect(stopWorkOf(atOnce, { done: { [mains[0]!]: '2027-01-05' } })?.before).toBe(mains[1]);
  const all = Object.fromEntries(mains.map((id) => [id, '2027-01-05']));
  expect(stopWorkOf(atOnce, { done: all })).toBeUndefined();
});

test('done all at once there is no later hold; in stages there is, and none with another lathe', () => {
  expect(laterHolds(atOnce, false)).toEqual([]);
  expect(laterHolds(inStages, false).length).toBeGreaterThan(0);
  expect(laterHolds(inStages, true)).toEqual([]);
});

test('a later hold stands at a stage that has work, asks for parts that this lathe cuts, and is the one of the job', () => {
  const known = new Map(inStages.map((task) => [task.id, task]));
  const stages = new Set(inStages.map((task) => task.stage));
  const holds = laterHolds(inStages, false);
  for (const hold of holds) {
    expect(stages).toContain(hold.opens);
    for (const id of hold.tasks) expect(known.get(id)?.lathe).toBe('cutting');
  }
  const order = [...stages];
  const places = holds.map(({ opens }) => order.indexOf(opens));
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  const job = workingOf(pathOf({ 'order-of-work': 'in-stages' }), currentEdition).holds;
  for (const { opens: _, ...hold } of holds) expect(job).toContainEqual(expect.objectContaining(hold));
});
