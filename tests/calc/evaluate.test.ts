import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyPath } from '../../src/calc/core/path.ts';
import { evaluate, type Report } from '../../src/calc/evaluate.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { anyPath } from '../arbitrary.ts';
import { cases, quickly } from '../cases.ts';

const nothing = emptyPath(currentEdition.edition);

/** Paths of every number in a report that is not finite. */
function notFinite(value: unknown, where = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [where];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${where}.${key}`));
}

function checkPlan(report: Report): void {
  const tasks = report.stages.flatMap((stage) => stage.tasks);
  const place = new Map(report.order.map((id, at) => [id, at]));
  expect(tasks.map((task) => task.id).sort()).toEqual([...report.order].sort());
  for (const task of tasks) {
    for (const before of task.after)
      expect(place.get(before)!, `${task.id} after ${before}`).toBeLessThan(place.get(task.id)!);
  }
}

describe('evaluate', () => {
  test('any path gives a report of finite numbers, plain data, in an order that can be worked', () => {
    fc.assert(
      fc.property(anyPath, (path) => {
        const report = evaluate(path, currentEdition);
        expect(notFinite(report)).toEqual([]);
        checkPlan(report);
        for (const line of [...report.bill.once, ...report.bill.perYear]) {
          expect(line.qty, line.part).toBeGreaterThan(0);
          expect(line.line[0], line.part).toBeGreaterThanOrEqual(0);
          expect(line.reasons.length, line.part).toBeGreaterThan(0);
        }
        expect(new Set(report.bill.once.map((line) => line.part)).size).toBe(report.bill.once.length);
      }),
      { numRuns: quickly(200) },
    );
  }, 300_000);

  test('random paths: every prerequisite is respected, no task waits in a circle', () => {
    for (const path of fc.sample(anyPath, { numRuns: cases(300, 3_000), seed: 5 }))
      checkPlan(evaluate({ ...path, facts: {} }, currentEdition));
  }, 300_000);

  test('a report survives being sent to a worker and being written as JSON', () => {
    const report = evaluate(nothing, currentEdition);
    expect(structuredClone(report)).toEqual(report);
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
  });

  test('the same path and edition give the same report', () => {
    expect(evaluate(nothing, currentEdition)).toEqual(evaluate(nothing, structuredClone(currentEdition)));
  });

  test('stage hours add up to the planned hours, and the means of the parts to the mean of the money', () => {
    fc.assert(
      fc.property(anyPath, (path) => {
        const { stages, hours, money } = evaluate(path, currentEdition);
        const tasks = stages.flatMap((stage) => stage.tasks);
        for (const end of [0, 1, 2] as const) {
          expect(tasks.reduce((sum, task) => sum + task.hours[end], 0)).toBeCloseTo(hours.planned[end], 6);
        }
        const { meanGoods, meanLanded, meanTrouble, meanCredit } = money.parts;
        expect(meanGoods + meanLanded + meanTrouble + meanCredit).toBeCloseTo(money.mean, 6);
      }),
      { numRuns: quickly(100) },
    );
  }, 300_000);

  test('owning a part never makes a path dearer', () => {
    const report = evaluate(nothing, currentEdition);
    for (const line of report.bill.once.filter((each) => !each.credit)) {
      const owning = evaluate({ ...nothing, owned: [line.part] }, currentEdition);
      expect(owning.money.mean, line.part).toBeLessThan(report.money.mean);
      expect(owning.bill.once.find((each) => each.part === line.part)?.owned).toBe(true);
    }
  }, 300_000);

  test('answering narrows the range: a full path has one way of answering, an empty one many', () => {
    const empty = evaluate(nothing, currentEdition);
    const answers = Object.fromEntries(
      empty.choices.filter((c) => c.status === 'open').map((c) => [c.decision, c.options]),
    );
    const full = evaluate({ ...nothing, answers }, currentEdition);
    expect(full.waysOfAnswering).toBe(1);
    expect(full.openQuestions).toEqual([]);
    expect(empty.waysOfAnswering).toBeGreaterThan(1);
    expect(full.money.p90 - full.money.p10).toBeLessThan(empty.money.p90 - empty.money.p10);
  });

  test('yearly money is never part of the once-only total', () => {
    const path = { ...nothing, answers: { 'program-making': ['drawing-to-path'] } };
    const report = evaluate(path, currentEdition);
    expect(report.bill.perYear.map((line) => line.part)).toEqual(['drawing-software']);
    expect(report.bill.once.some((line) => line.yearly)).toBe(false);
    expect(report.yearly[2]).toBeGreaterThan(0);
  });

  test('weeks out of use halve when the hours a week double', () => {
    const slow = evaluate({ ...nothing, facts: { 'hours-per-week': 6 } }, currentEdition);
    const fast = evaluate({ ...nothing, facts: { 'hours-per-week': 12 } }, currentEdition);
    expect(fast.weeksOut.p50).toBeCloseTo(slow.weeksOut.p50 / 2, 9);
  });
});
