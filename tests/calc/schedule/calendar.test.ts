// The calendar of a path: what it adds up to, and that it agrees with the report in every build.
import { describe, expect, test } from 'vitest';
import { emptyPath } from '../../../src/calc/core/path.ts';
import { nothingDone } from '../../../src/calc/core/progress.ts';
import { editionOf } from '../../../src/calc/cost/edition.ts';
import { ordersOf } from '../../../src/calc/cost/orders.ts';
import { totalsOf } from '../../../src/calc/cost/totals.ts';
import { wantedOf } from '../../../src/calc/cost/wanted.ts';
import { planState, waysOf } from '../../../src/calc/cost/ways.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { machineOf } from '../../../src/calc/facts.ts';
import { preparePath } from '../../../src/calc/schedule/prepared-ways.ts';
import { tallyOf } from '../../../src/calc/schedule/tally.ts';
import { calendarOf, dayAtWeek, isDay } from '../../../src/calc/working.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf, referencePaths } from '../../../src/content/reference-paths.ts';

const cases = [
  ...referencePaths.map(({ id, path }) => [id, path] as const),
  ['in stages', pathOf({ 'order-of-work': 'in-stages' })] as const,
  ['electrics first, small lathe', pathOf({ 'order-of-work': 'bench-electrics-first' }, 'small')] as const,
  ['nothing answered', emptyPath(currentEdition.edition)] as const,
  [
    'quotes, orders, and one part that the plan does not ask for',
    pathOf({}, 'medium', {
      purchases: {
        'ball-screw-carriage': { state: 'ordered', price: '72.50', seller: 'far away' },
        'closed-set-57': { state: 'quoted', price: '111.11' },
        'steel-cabinet-part': { state: 'checked', price: '95', seller: 'near by' },
        'indexing-changer': { state: 'arrived', price: '500' },
      },
      sellers: { 'far away': { abroad: true }, 'near by': { freight: '12' } },
    }),
  ] as const,
  ['a flat allowance', pathOf({}, 'medium', { allowance: 0.1 })] as const,
  ['own chances', pathOf({}, 'medium', { chances: { 'bed-twist': 0.9, 'seized-bolts': 0 } })] as const,
  ['own parts', pathOf({}, 'large', { owned: ['closed-set-57', 'steel-cabinet-part'] })] as const,
];

/** A second round of parcels, for which the quick figure has no room. */
const inRounds = new Set(cases.filter(([name]) => name === 'in stages').map(([, path]) => path));

const worst = (a: ArrayLike<number>, b: ArrayLike<number>): number =>
  Array.from(a, (value, at) => Math.abs(value - b[at]!)).reduce((x, y) => Math.max(x, y), 0);

describe.each(cases)('%s', (_, path) => {
  const machine = machineOf(path.size, path.facts);
  const plan = planState(path, machine);
  const edition = editionOf(currentEdition);
  const ways = waysOf(path, plan, currentEdition.seed);
  const orders = ordersOf(wantedOf(plan.state, machine, currentEdition), path, edition);
  const totals = totalsOf(ways, machine, path, edition, orders);
  const tally = tallyOf(preparePath(path, currentEdition).ways);
  const sum = (columns: Iterable<Float64Array>): Float64Array => {
    const total = new Float64Array(totals.money.length);
    for (const column of columns)
      column.forEach((value, build) => {
        total[build]! += value;
      });
    return total;
  };
  const calendar = calendarOf(path, currentEdition, { start: '2027-01-04' });

  test('stages and months of every build add up to its money and its hours', () => {
    expect(worst(sum(tally.stageCents.values()), totals.money)).toBeLessThan(0.5);
    expect(worst(sum(tally.monthCents), totals.money)).toBeLessThan(0.5);
    expect(
      worst(
        sum(tally.stageHours.values()),
        totals.hours.map((hours) => hours / 100),
      ),
    ).toBeLessThan(1e-6);
  });

  test('the stages hold every line of the bill once, and their lines add up to the cent', () => {
    const { bill } = evaluate(path, currentEdition);
    expect(calendar.stages.flatMap((stage) => stage.parts).sort()).toEqual(
      bill.once.map((line) => line.part).sort(),
    );
    for (const end of [0, 1, 2] as const) {
      const cents = calendar.stages.reduce((all, stage) => all + Math.round(stage.lines[end] * 100), 0);
      expect(cents).toBe(Math.round(calendar.lines[end] * 100));
      const signed = bill.once.reduce(
        (all, line) => all + (line.credit ? -1 : 1) * Math.round(line.line[end] * 100),
        0,
      );
      expect(cents).toBe(signed);
    }
  });

  test('the months add up to the mean of the money, and the last of them to all of it', () => {
    const { money } = evaluate(path, currentEdition);
    expect(calendar.months.reduce((all, month) => all + month.mean, 0)).toBeCloseTo(money.mean, 2);
    expect(calendar.months.at(-1)!.soFar.p50).toBeCloseTo(money.p50, 2);
  });

  test('work, waiting and the end agree', () => {
    const hours = sum(tally.stageHours.values()).map((each) => each / calendar.hoursAWeek);
    expect(
      worst(
        tally.weeks,
        hours.map((weeks, build) => weeks + tally.weeksIdle[build]!),
      ),
    ).toBeLessThan(1e-6);
    expect(Math.min(...tally.weeksIdle)).toBeGreaterThan(-1e-9);
    expect(Math.max(...tally.weeksOut.map((out, build) => out - tally.weeks[build]!))).toBeLessThan(0);
  });

  test('the longest chain with helpers is no longer than the job of one pair of hands', () => {
    expect(calendar.longestChain).toBeLessThan(calendar.weeks.mean);
    expect(calendar.mergeWeeks).toBeGreaterThan(0);
    expect(calendar.tasks.some((task) => task.critical)).toBe(true);
    expect(calendar.tasks.every((task) => task.float >= 0 && task.critical === task.float < 1e-6)).toBe(true);
  });

  test('typical days follow the weeks, and order-by dates leave the likely lead', () => {
    for (const { days, start, finish } of calendar.tasks) {
      expect(days).toEqual({
        from: dayAtWeek('2027-01-04', start.p50),
        to: dayAtWeek('2027-01-04', finish.p50),
      });
    }
    for (const row of calendar.deliveries) {
      expect(row.orderBySlow).toBeLessThanOrEqual(row.orderBy);
      expect(row.orderBy).toBeLessThanOrEqual(row.needed.p50);
      expect(row.spare.p10).toBeGreaterThanOrEqual(0);
    }
  });

  test('the quick figure of the report lies within three weeks of the calendar', () => {
    const { weeksTotal, weeksOut } = evaluate(path, currentEdition);
    expect(Math.abs(weeksTotal.p50 - calendar.weeks.p50)).toBeLessThan(inRounds.has(path) ? 6 : 3);
    expect(Math.abs(weeksOut.p50 - calendar.weeksOut.p50)).toBeLessThan(3);
  });

  test('it is plain data', () => {
    expect(JSON.parse(JSON.stringify(calendar))).toEqual(calendar);
  });
});

describe('a job under way', () => {
  const { path } = referencePaths[0]!;
  const before = calendarOf(path, currentEdition);
  const first = before.tasks.slice(0, 20).map((task) => task.id);
  const progress = {
    ...nothingDone,
    done: Object.fromEntries(first.map((id) => [id, '2027-03-01'])),
    spent: Object.fromEntries(first.map((id) => [id, 2])),
  };
  const after = calendarOf(path, currentEdition, { progress, start: '2027-03-01' });

  test('what is done takes no more time and has no spread', () => {
    for (const task of after.tasks.slice(0, 20)) {
      expect(task.done).toBe(true);
      expect(task.hours).toEqual({ p10: 2, p50: 2, p90: 2 });
      expect(task.finish.p90).toBe(task.start.p90);
    }
    expect(after.weeks.p50).toBeLessThan(before.weeks.p50);
  });

  test('the range is narrower', () => {
    expect(after.weeks.p90 - after.weeks.p10).toBeLessThan(before.weeks.p90 - before.weeks.p10);
  });

  test('parcels that have come are waited for no longer', () => {
    const purchases = Object.fromEntries(
      before.deliveries.map((row) => [row.part, { state: 'arrived' as const }]),
    );
    const here = calendarOf({ ...path, purchases }, currentEdition);
    expect(here.deliveries).toEqual([]);
    expect(here.weeksIdle.p90).toBeCloseTo(0, 9);
  });
});

test('days: one that does not exist is none, and a week later is seven days', () => {
  expect([isDay('2027-02-28'), isDay('2027-02-29'), isDay('2027-1-4'), isDay('soon')]).toEqual([
    true,
    false,
    false,
    false,
  ]);
  expect(dayAtWeek('2027-12-29', 1)).toBe('2028-01-05');
  expect(dayAtWeek('2028-02-28', 1 / 7)).toBe('2028-02-29');
  expect(() => dayAtWeek('2027-02-30', 1)).toThrow('not a day');
  expect(calendarOf(referencePaths[0]!.path, currentEdition, { start: '2027-02-30' }).start).toBeUndefined();
});
