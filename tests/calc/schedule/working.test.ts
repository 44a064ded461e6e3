// Working from the plan: what is next, what waits for what, what was measured, and what another answer leaves behind.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Path } from '../../../src/calc/core/path.ts';
import { nothingDone, type Progress, shelfMarks } from '../../../src/calc/core/progress.ts';
import { mm } from '../../../src/calc/core/reading.ts';
import { planState } from '../../../src/calc/cost/ways.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { machineOf } from '../../../src/calc/facts.ts';
import { networkOf } from '../../../src/calc/schedule/network.ts';
import { preparePath } from '../../../src/calc/schedule/prepared-ways.ts';
import { shelfRows } from '../../../src/calc/schedule/shelf.ts';
import { standsOf } from '../../../src/calc/schedule/stands.ts';
import { taskIndex, tasks } from '../../../src/calc/trade.ts';
import { type Working, workingOf } from '../../../src/calc/working.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';
import { anyPath } from '../../arbitrary.ts';
import { quickly } from '../../cases.ts';

const reference = pathOf({});
const report = evaluate(reference, currentEdition);
const order = workingOf(reference, currentEdition).tasks.map((task) => task.id);

const ticked = (ids: readonly string[], rest: Partial<Progress> = {}): Progress => ({
  ...nothingDone,
  done: Object.fromEntries(ids.map((id) => [id, '2027-02-01'])),
  ...rest,
});
const until = (id: string): string[] => order.slice(0, order.indexOf(id));
const fullShelf = Object.fromEntries(shelfRows.map(({ id }) => [id, shelfMarks]));
const stand = (working: Working, id: string) => working.tasks.find((task) => task.id === id)!;

describe('what is next', () => {
  test('at the beginning the job list, and everything behind it is blocked', () => {
    const working = workingOf(reference, currentEdition);
    expect(working.next).toBe('write-job-list');
    expect(stand(working, 'condition-survey')).toMatchObject({
      standing: 'blocked',
      tasks: ['write-job-list', 'unpack-and-clear'],
    });
    expect(working.tasks.filter((task) => task.standing === 'next').length).toBe(1);
    expect(working.tasks.map((task) => task.id).sort()).toEqual([...report.order].sort());
  });

  test('going down the list one by one never gets stuck, and ends', () => {
    const { own, state } = preparePath(reference, currentEdition);
    const done: string[] = [];
    for (;;) {
      const stands = standsOf(own.network, state, reference, ticked(done, { shelf: fullShelf }));
      const next = stands.find((task) => task.standing === 'next');
      if (next === undefined) break;
      done.push(next.id);
    }
    expect(done).toEqual(order);
  });

  test('random paths: what is next has everything before it ticked, whatever has been ticked', () => {
    fc.assert(
      fc.property(anyPath, fc.array(fc.constantFrom(...taskIndex.keys()), { maxLength: 60 }), (path, ids) => {
        const { state } = planState(path, machineOf(path.size, path.facts));
        const network = networkOf(state, path, currentEdition);
        const stands = standsOf(network, state, path, ticked(ids, { shelf: fullShelf }));
        for (const [at, task] of stands.entries()) {
          const open = network.tasks[at]!.after.filter((id) => !ids.includes(id));
          expect(task.standing === 'done').toBe(ids.includes(task.id));
          if (task.standing === 'next' || task.standing === 'ready') expect(open).toEqual([]);
          if (task.standing === 'blocked') expect(task.tasks).toEqual(open);
        }
        expect(stands.filter((task) => task.standing === 'next').length).toBeLessThanOrEqual(1);
        expect(stands.some((task) => task.standing !== 'done')).toBe(
          stands.some((task) => task.standing === 'next'),
        );
      }),
      { numRuns: quickly(200) },
    );
  });
});

describe('parts', () => {
  const purchases: Path['purchases'] = { 'ball-screw-carriage': { state: 'ordered' } };
  const done = ticked(until('carriage-brackets'));

  test('where purchases are written down, what has not come blocks its task', () => {
    const working = workingOf({ ...reference, purchases }, currentEdition, done);
    expect(stand(working, 'carriage-brackets').parts).toContain('ball-screw-carriage');
    expect(stand(working, 'carriage-brackets').standing).toBe('blocked');
  });

  test('where none are, nobody is held up by them', () => {
    expect(workingOf(reference, currentEdition, done).next).toBe('carriage-brackets');
  });
});

describe('the make-first list', () => {
  const done = ticked(until('strip-carriage'));

  test('holds the lathe together until every mark is set', () => {
    const working = workingOf(reference, currentEdition, done);
    expect(working.shelf.isGate).toBe(true);
    expect(stand(working, 'strip-carriage').shelf).toEqual(
      expect.arrayContaining(['carriage-plates', 'spindle-plate']),
    );
    expect(stand(working, 'strip-carriage').standing).toBe('blocked');
    expect(workingOf(reference, currentEdition, { ...done, shelf: fullShelf }).next).toBe('strip-carriage');
  });

  test('a line asks for drawing, made, measured, spare and photo; bought brackets are measured and kept', () => {
    const lineOf = (path: Path) =>
      workingOf(path, currentEdition).shelf.lines.find((line) => line.id === 'carriage-plates')!;
    expect(lineOf(reference)).toMatchObject({
      bought: false,
      open: ['drawing', 'made', 'measured', 'spare', 'photo'],
    });
    expect(lineOf(pathOf({ brackets: 'ordered-to-drawing' }))).toMatchObject({
      bought: true,
      open: ['drawing', 'measured', 'photo'],
    });
  });

  test('with another lathe it is a list and no gate, and hold point A is gone', () => {
    const path = pathOf({ 'which-lathe': 'spare-lathe' });
    const working = workingOf(path, currentEdition);
    expect(working.shelf.isGate).toBe(false);
    expect(working.tasks.every((task) => task.shelf.length === 0)).toBe(true);
    expect(working.holds.map((hold) => hold.id)).not.toContain('hold-make-first');
  });

  test('in stages the carriage waits for its own lines only', () => {
    const path = pathOf({ 'order-of-work': 'in-stages' });
    const all = workingOf(path, currentEdition).tasks.map((task) => task.id);
    const working = workingOf(path, currentEdition, ticked(all.slice(0, all.indexOf('strip-carriage'))));
    expect(stand(working, 'strip-carriage').shelf).toContain('carriage-plates');
    expect(stand(working, 'strip-carriage').shelf).not.toContain('cross-plates');
  });
});

describe('holds and mains', () => {
  test('a hold opens when its last task is ticked', () => {
    const open = workingOf(reference, currentEdition).holds.find((hold) => hold.id === 'hold-stop-circuit')!;
    expect(open).toMatchObject({ open: ['prove-stop-circuit'], passed: false });
    const shut = workingOf(reference, currentEdition, ticked(['prove-stop-circuit'])).holds;
    expect(shut.find((hold) => hold.id === 'hold-stop-circuit')!.passed).toBe(true);
  });

  test('in stages the make-first hold is split, a round before each stage; the parts of all rounds together are those of the job', () => {
    const path = pathOf({ 'order-of-work': 'in-stages' });
    const makeFirst = workingOf(path, currentEdition).holds.filter((hold) =>
      hold.id.startsWith('hold-make-first'),
    );
    expect(makeFirst.length).toBeGreaterThanOrEqual(2);
    expect(makeFirst[0]!.tasks).toContain('spare-of-each-carriage');
    expect(makeFirst[0]!.tasks).not.toContain('spare-of-each-cross');
    const cutting = evaluate(path, currentEdition)
      .stages.flatMap((stage) => stage.tasks)
      .filter((task) => task.lathe === 'cutting');
    expect(makeFirst.flatMap((hold) => hold.tasks).sort()).toEqual(cutting.map((task) => task.id).sort());
  });

  test('the stop-work note stands before the first task on mains that is still to do', () => {
    const { stopWork } = workingOf(reference, currentEdition);
    expect(stopWork!.before).toBe('fit-out-cabinet');
    expect(stopWork!.say).toMatch(/local wiring rules.*licensed electrician/s);
    expect(workingOf(reference, currentEdition, ticked(stopWork!.tasks)).stopWork).toBeUndefined();
  });
});

describe('readings', () => {
  const measured = (values: Progress['values']) =>
    workingOf(reference, currentEdition, { ...nothingDone, values });

  test('a value outside its limit points at tasks and risks of this plan', () => {
    const play = measured({ 'carriage-end-play': [mm(0.012)] }).readings.find(
      (reading) => reading.id === 'carriage-end-play',
    )!;
    expect(play).toMatchObject({ judged: ['outside'], worst: 'outside', atMost: mm(0.01) });
    expect(play.points!.tasks).toContain('incoming-inspection');
    expect(play.points!.tasks.every((id) => report.order.includes(id))).toBe(true);
    const risks = new Set(report.risks.map((risk) => risk.id));
    expect(play.points!.risks.every((id) => risks.has(id))).toBe(true);
  });

  test('a value inside has no pointer, and no value no judgement', () => {
    const [within] = measured({ 'carriage-end-play': [mm(0.008)] }).readings.filter(
      (reading) => reading.id === 'carriage-end-play',
    );
    expect(within!.worst).toBe('within');
    expect(within!.points).toBeUndefined();
    expect(measured({}).readings.every((reading) => reading.worst === undefined)).toBe(true);
  });

  test('they stand in the order of the work, and what is not asked here is kept apart', () => {
    const { readings, otherReadings } = measured({ 'lead-screw-end-play': [0], 'no-such-reading': [1] });
    const places = readings.map((reading) => order.indexOf(reading.task));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(otherReadings).toEqual(['lead-screw-end-play', 'no-such-reading']);
  });

  test('a small lathe is pushed against its own limit', () => {
    const of = (size: 'small' | 'medium') =>
      workingOf(pathOf({}, size), currentEdition).readings.filter((reading) =>
        reading.id.startsWith('push-at-tool'),
      );
    expect(of('small').map((reading) => reading.atMost)).toEqual([mm(0.08)]);
    expect(of('medium').map((reading) => reading.atMost)).toEqual([mm(0.05)]);
  });
});

describe('after a change of answer', () => {
  const progress = ticked([...until('drill-bed-and-apron'), 'drill-bed-and-apron'], {
    spent: { 'drill-bed-and-apron': 4 },
  });

  test('what cannot be undone is said so, and its hours stay counted', () => {
    const changed = pathOf({ 'carriage-drive': 'original-lead-screw', apron: 'keep-apron' });
    const working = workingOf(changed, currentEdition, progress);
    expect(working.contradictions).toContainEqual(
      expect.objectContaining({ kind: 'cannot-be-undone', task: 'drill-bed-and-apron', missing: [] }),
    );
    const without = workingOf(changed, currentEdition, { ...progress, spent: {} });
    expect(working.hours.total.p50).toBeCloseTo(without.hours.total.p50 + 4, 6);
    expect(working.hours.spent).toBe(4);
  });

  test('what the new plan wants before something that is ticked is named', () => {
    const working = workingOf(reference, currentEdition, ticked(['first-powered-carriage']));
    const early = working.contradictions.find((each) => each.task === 'first-powered-carriage')!;
    expect(early.kind).toBe('out-of-order');
    expect(early.missing).toContain('prove-stop-circuit');
    expect(early.say).toContain('Prove the stop circuit');
  });

  test('what can be put back is said so, and names nothing that is missing', () => {
    const changed = pathOf({ 'carriage-drive': 'original-lead-screw', apron: 'keep-apron' });
    const kept = new Set(
      evaluate(changed, currentEdition).stages.flatMap(({ tasks }) => tasks.map(({ id }) => id)),
    );
    const gone = order.find(
      (id) => !kept.has(id) && tasks.find((task) => task.id === id)?.undo !== 'cannot-be-undone',
    )!;
    const { contradictions } = workingOf(changed, currentEdition, ticked([gone]));
    const [about] = contradictions.filter(({ task }) => task === gone);
    expect(about).toMatchObject({ kind: 'not-in-plan', missing: [] });
    expect(about!.say).toContain('see whether something has to be put back');
  });

  test('a tick of a task that exists no more is kept and said', () => {
    const { contradictions } = workingOf(reference, currentEdition, ticked(['gone-for-good']));
    expect(contradictions).toEqual([
      expect.objectContaining({ kind: 'unknown', task: 'gone-for-good', missing: [] }),
    ]);
  });

  test('a plan followed in its order has none', () => {
    expect(workingOf(reference, currentEdition, ticked(order)).contradictions).toEqual([]);
  });
});

describe('hours', () => {
  test('nothing done: the whole job is left', () => {
    const { hours } = workingOf(reference, currentEdition);
    expect(hours.spent).toBe(0);
    expect(hours.left).toEqual(hours.total);
    expect(hours.total.p50).toBeCloseTo(report.hours.p50, 6);
  });

  test('everything done with its hours: exact, and nothing left', () => {
    const spent = Object.fromEntries(order.map((id) => [id, 3]));
    const { hours } = workingOf(reference, currentEdition, ticked(order, { spent }));
    expect(hours.total.p10).toBe(3 * order.length);
    expect(hours.total.p90).toBe(3 * order.length);
    expect(hours.left.p90).toBe(0);
  });

  test('a task that already took longer than its estimate takes at least that', () => {
    const spent = { 'wiring-schematic': 40 };
    const { hours } = workingOf(reference, currentEdition, { ...nothingDone, spent });
    const plain = workingOf(reference, currentEdition).hours;
    expect(hours.total.mean - plain.total.mean).toBeGreaterThan(25);
    expect(hours.left.mean).toBeLessThan(plain.left.mean);
  });

  test('it is plain data', () => {
    const working = workingOf(reference, currentEdition, ticked(until('strip-carriage')));
    expect(JSON.parse(JSON.stringify(working))).toEqual(working);
  });
});
