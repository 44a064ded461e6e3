import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { calendarOf, dayAfter, isDay, orderByOf } from '../../src/calc/schedule/order-by.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { pathOf } from '../../src/content/reference-paths.ts';

const report = evaluate(pathOf({}), currentEdition);
const lineOf = (part: string, of = report) => of.bill.once.find((line) => line.part === part)!;

describe('order-by days', () => {
  test('a stage begins when the likely hours before it are worked off', () => {
    const calendar = calendarOf(report.stages, 6);
    expect(calendar.stages[0]!.day).toBe(0);
    const before = report.stages.slice(0, 3).reduce((hours, stage) => hours + stage.hours[1], 0);
    expect(calendar.stages[3]!.day).toBe(Math.floor((before / 6) * 7));
  });

  test('needed at less the likely and less the slow lead time', () => {
    const calendar = calendarOf(report.stages, 6);
    const order = orderByOf('make-first', [7, 18, 45], calendar);
    expect(order.neededAt - order.likely).toBe(18);
    expect(order.neededAt - order.slow).toBe(45);
    expect(order.dates).toBeUndefined();
  });

  test('screws are wanted before brackets are made, cabinet parts before the bench, covers at the machine', () => {
    expect(lineOf('ball-screw-carriage').stage).toBe('make-first');
    expect(lineOf('steel-cabinet-part').stage).toBe('bench-electrics');
    expect(lineOf('bellows-part').stage).toBe('machine-wiring');
  });

  test('every line has a stage of the plan', () => {
    const ids = new Set(report.stages.map(({ id }) => id));
    expect(report.bill.once.filter(({ stage }) => !ids.has(stage))).toEqual([]);
  });

  test('with a start day they are dates', () => {
    const dated = evaluate({ ...pathOf({}), start: '2027-02-25' }, currentEdition);
    const { neededAt, likely, slow, dates } = lineOf('ball-screw-carriage', dated).orderBy;
    expect(dates).toEqual({
      neededAt: dayAfter('2027-02-25', neededAt),
      likely: dayAfter('2027-02-25', likely),
      slow: dayAfter('2027-02-25', slow),
    });
  });

  test('a start that is no day of the calendar gives no dates', () => {
    for (const start of ['2027-02-29', '25.2.2027', '', '2027-13-01']) {
      const odd = evaluate({ ...pathOf({}), start }, currentEdition);
      expect(lineOf('ball-screw-carriage', odd).orderBy.dates).toBeUndefined();
    }
  });

  test('days over the ends of months and years', () => {
    expect(dayAfter('2028-02-28', 1)).toBe('2028-02-29');
    expect(dayAfter('2027-01-01', -1)).toBe('2026-12-31');
    expect(dayAfter('2026-11-27', 400)).toBe('2028-01-01');
    expect(isDay('2028-02-29')).toBe(true);
    expect(isDay('2027-02-29')).toBe(false);
  });
});
