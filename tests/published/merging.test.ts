// Where several things must be there before work goes on, the last of them counts: the mean of the latest is later than the
// latest mean. Printed figures for the very draws that the calendar is made from.
import { describe, expect, test } from 'vitest';
import { stratifiedScores } from '../../src/calc/cost/strata.ts';
import { criticalPath } from '../../src/calc/formulas/critical-path.ts';
import { newRun, work, workable } from '../../src/calc/schedule/worker.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { activitiesOf, sevenArrows, thirteenArrows, WEEK } from './networks.ts';

describe('mean of the largest of n standard normal values', () => {
  // Tippett, On the extreme individuals and the range of samples taken from a normal population, Biometrika 17, 1925,
  // as in David and Nagaraja, Order Statistics; figures from memory.
  test.each([
    [2, 0.5642],
    [3, 0.8463],
    [5, 1.163],
    [10, 1.5388],
  ])('n %d', (n, printed) => {
    // Ten sets of columns, so that the scatter of 2,000 builds does not decide; four of its standard errors allowed.
    const means = Array.from({ length: 10 }, (_, set) => {
      const columns = Array.from({ length: n }, (_each, at) =>
        stratifiedScores(currentEdition.seed, `merge ${set} ${at}`),
      );
      return (
        columns[0]!.reduce((sum, _value, build) => sum + Math.max(...columns.map((c) => c[build]!)), 0) / 2000
      );
    });
    const mean = means.reduce((sum, each) => sum + each, 0) / means.length;
    expect(Math.abs(mean - printed)).toBeLessThan(0.02);
  });
});

describe('one pair of hands', () => {
  const alone = (tasks: readonly { id: string; weeks: number; after: readonly string[] }[]): number => {
    const place = new Map(tasks.map(({ id }, at) => [id, at]));
    const network = {
      tasks: tasks as never,
      before: tasks.map(({ after }) => after.map((id) => place.get(id)!)),
      deliveries: [],
      waitsFor: tasks.map(() => []),
    };
    const run = newRun(network);
    work(
      workable(network),
      Float64Array.from(tasks, ({ weeks }) => weeks),
      new Float64Array(0),
      run,
    );
    return Math.max(...run.finish);
  };

  // Plain arithmetic: weeks = hours ÷ hours a week.
  test('120 hours at 6 a week are 20 weeks', () =>
    expect(alone([{ id: 'job', weeks: 120 / 6, after: [] }])).toBe(20));

  // Taylor, Introduction to Management Science, ch. 8 solutions: with helpers 20 and 38 weeks; alone, the sum of all.
  test.each([
    ['seven arrows', sevenArrows, 20, 37],
    ['thirteen arrows', thirteenArrows, 38, 105],
  ] as const)('%s', (_, arrows, together, one) => {
    const activities = activitiesOf(arrows);
    expect(criticalPath.compute({ activities }).length / WEEK).toBe(together);
    expect(alone(activities.map(({ id, duration, after }) => ({ id, weeks: duration / WEEK, after })))).toBe(
      one,
    );
  });
});
