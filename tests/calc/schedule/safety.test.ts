// Where somebody could be hurt the task says so; paper hurts nobody.
import { expect, test } from 'vitest';
import { tasks } from '../../../src/calc/trade.ts';

const onPaper = new Set([
  'write-job-list',
  'layout-sketch',
  'screw-drawings',
  'bracket-drawings',
  'order-long-lead',
  'order-short-lead',
  'pc-jitter-test',
  'read-control-manual',
  'settings-sheet',
]);

const said = (id: string): string => tasks.find((task) => task.id === id)?.safety ?? '';

test('every task that is not on paper carries a line of caution, and no other is left out', () => {
  const mute = tasks.filter((task) => !task.safety && !onPaper.has(task.id));
  expect(mute.map((task) => task.id)).toEqual([]);
  expect([...onPaper].filter((id) => !tasks.some((task) => task.id === id))).toEqual([]);
});

test('mains work says how it is made dead, or who may do it', () => {
  const mains = tasks.filter((task) => task.mains);
  expect(mains.length).toBeGreaterThanOrEqual(10);
  const silent = mains.filter(
    ({ safety }) => !/unplug|disconnect|measured dead|competent|may do it|under 60 V/i.test(safety!),
  );
  expect(silent.map((task) => task.id)).toEqual([]);
});

test.each([
  ['bar behind the headstock', 'fit-bar-stop', /tube/],
  ['key in the chuck', 'air-cut', /spring key/],
  ['tool in a hole when homing', 'homing-and-soft-limits', /bore/],
  ['first enable of a servo', 'servo-first-enable', /[Bb]elt off/],
  ['belt against speed', 'machine-card', /belt/],
  ['leaving it alone', 'first-real-part', /Stay beside it/],
  ['cloth, gloves, hair', 'turning-test', /abrasive cloth/],
  ['measure, do not wait', 'fit-out-cabinet', /measure under 60 V/],
  ['two earths', 'bond-and-measure-earths', /3\.5 mA/],
  ['the red button', 'monthly-stop-test', /not for switching off/],
  ['others at the machine', 'freeze-the-path', /maker of a changed machine/],
  ['iron dust', 'drill-bed-and-apron', /vacuum/],
  ['lifting', 'build-stand', /Chuck and tailstock off/],
])('%s', (_, task, words) => expect(said(task)).toMatch(words));

test('after a dip or a reset nothing moves: the test on the machine asks for it', () => {
  expect(tasks.find((task) => task.id === 'first-power-on-machine')!.test).toMatch(/until start is pressed/);
});
