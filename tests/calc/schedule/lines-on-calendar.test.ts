import { expect, test } from 'vitest';
import { onCalendar } from '../../../src/calc/buying.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { calendarOf } from '../../../src/calc/working.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';

const path = { ...referencePaths[0]!.path, edition: currentEdition.edition, start: '2027-03-01' };
const report = evaluate(path, currentEdition);
const calendar = calendarOf(path, currentEdition);
const dated = onCalendar(report, calendar);

test('the buy list and the calendar name the same last day to order', () => {
  const byPart = new Map(dated.bill.once.map((line) => [line.part, line.orderBy]));
  expect(calendar.deliveries.length).toBeGreaterThan(50);
  for (const { part, days, orderBy } of calendar.deliveries) {
    expect(byPart.get(part)?.dates?.likely).toBe(days!.orderBy);
    expect(byPart.get(part)?.likely).toBe(Math.round(orderBy * 7));
  }
});

test('what no parcel brings keeps its day, and nothing but the days is changed', () => {
  const known = new Set(calendar.deliveries.map(({ part }) => part));
  for (const [at, line] of dated.bill.once.entries()) {
    const { orderBy, ...rest } = report.bill.once[at]!;
    const { orderBy: now, ...shown } = line;
    expect(shown).toEqual(rest);
    if (!known.has(line.part)) expect(now).toEqual(orderBy);
  }
});
