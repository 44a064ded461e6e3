// What is kept of every build of one plan: that it comes in the order of time, and what is made of it.
import { describe, expect, it } from 'vitest';
import { emptyPath } from '../../../src/calc/core/path.ts';
import { BUILDS } from '../../../src/calc/cost/strata.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { preparePath } from '../../../src/calc/schedule/prepared-ways.ts';
import { watchTasks } from '../../../src/calc/schedule/watch.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';

const path = pathOf({});
const ready = () => preparePath(path, currentEdition);
const watched = () => watchTasks(ready().own);
const builds = Array.from({ length: BUILDS }, (_, build) => build);

describe('a plan worked in every build', () => {
  it('ends no task before it is begun, and ends with the last of them', () => {
    const seen = watched();
    for (const build of builds) {
      const finish = seen.finish.map((column) => column[build]!);
      seen.start.forEach((column, task) => {
        expect(column[build]).toBeLessThanOrEqual(finish[task]!);
      });
      expect(seen.weeks[build]).toBe(Math.max(...finish));
      expect(seen.weeks[build]).toBeGreaterThan(1);
    }
  });

  it('has nothing arrive before it is ordered', () => {
    const seen = watched();
    expect(seen.ordered.length).toBeGreaterThan(5);
    seen.arrives.forEach((column, at) => {
      for (const build of builds) expect(column[build]).toBeGreaterThanOrEqual(seen.ordered[at]![build]!);
      expect(Math.max(...column)).toBeGreaterThan(0);
    });
  });

  it('lasts, where all takes its mean time, no longer than on average, and most of that', () => {
    const seen = watched();
    const average = seen.weeks.reduce((sum, weeks) => sum + weeks, 0) / BUILDS;
    expect(seen.weeksAtMeans).toBeLessThan(average);
    expect(seen.weeksAtMeans).toBeGreaterThan(0.7 * average);
  });

  it('says weeks, and days where a first day is given', () => {
    const seen = watched();
    const [two, five] = [2, 5].map((weeks) => new Float64Array(BUILDS).fill(weeks)) as [
      Float64Array,
      Float64Array,
    ];
    const when = seen.when(two, five, undefined);
    expect([when.start.p50, when.finish.p50, when.days]).toEqual([2, 5, undefined]);
    expect(seen.when(two, five, '2027-01-04')).toEqual({
      ...when,
      days: { from: '2027-01-18', to: '2027-02-08' },
    });
  });
});

describe('a path ready to be worked', () => {
  it('has the lines of the bill that are paid once', () => {
    const drawn = pathOf({ 'program-making': 'drawing-to-path' });
    const { bill } = evaluate(drawn, currentEdition);
    const { lines } = preparePath(drawn, currentEdition);
    expect(lines.map(({ part }) => part).toSorted()).toEqual(bill.once.map(({ part }) => part).toSorted());
    expect(bill.perYear.length).toBeGreaterThan(0);
  });

  it('stands on itself where every question is answered, on many ways where they are open', () => {
    const answered = ready();
    expect(answered.ways.map((way) => way === answered.own)).toEqual([true]);
    const open = preparePath(emptyPath(currentEdition.edition), currentEdition);
    expect(open.ways.length).toBeGreaterThan(1);
    expect(open.ways).not.toContain(open.own);
    const stretches = open.ways.map(({ builds }) => builds);
    expect([stretches[0]!.from, stretches.at(-1)!.to]).toEqual([0, BUILDS]);
    for (const [at, { from }] of stretches.entries()) expect(from).toBe(stretches[at - 1]?.to ?? 0);
  });
});
