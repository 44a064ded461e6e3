// The strip and the picture of what waits for what: layout in numbers, with the same in words.
import { describe, expect, test } from 'vitest';
import { calendarOf } from '../../src/calc/working.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { pathOf, referencePaths } from '../../src/content/reference-paths.ts';
import { dependenciesOf } from '../../src/export/dependencies.ts';
import { stripOf } from '../../src/export/strip.ts';

describe.each([
  ...referencePaths.map(({ id, path }) => [id, path] as const),
  [
    'in stages, an hour a week',
    pathOf({ 'order-of-work': 'in-stages' }, 'medium', { facts: { 'hours-per-week': 1 } }),
  ],
] as const)('%s', (_, path) => {
  const calendar = calendarOf(path, currentEdition);
  const strip = stripOf(calendar);
  const picture = dependenciesOf(calendar);

  test('every stage and every task is on the strip, inside it and the right way round', () => {
    expect(strip.rows.map((row) => row.id)).toEqual(calendar.stages.map((stage) => stage.id));
    const tasks = strip.rows.flatMap((row) => row.tasks);
    expect(tasks.map((task) => task.id).sort()).toEqual(calendar.tasks.map((task) => task.id).sort());
    for (const bar of [...strip.rows, ...tasks, ...strip.parcels, ...strip.out]) {
      expect(bar.from).toBeGreaterThanOrEqual(0);
      expect(bar.to).toBeLessThanOrEqual(1);
      expect(bar.to).toBeGreaterThanOrEqual(bar.from);
    }
    for (const row of strip.rows) expect(row.early <= row.to && row.to <= row.late).toBe(true);
  });

  test('marks are few, evenly apart and in range', () => {
    expect(strip.marks.length).toBeGreaterThan(2);
    expect(strip.marks.length).toBeLessThanOrEqual(12);
    const steps = strip.marks.slice(1).map((mark, at) => mark.week - strip.marks[at]!.week);
    expect(new Set(steps).size).toBe(1);
    expect(strip.marks.at(-1)!.week).toBeLessThanOrEqual(strip.length);
  });

  test('the words say every row', () => {
    for (const row of strip.rows) expect(strip.words.some((line) => line.startsWith(row.name))).toBe(true);
    expect(strip.words.length).toBe(strip.rows.length + strip.parcels.length + strip.out.length);
  });

  test('the picture has each task once, no two in one place, and every line runs to the right', () => {
    expect(picture.boxes.map((box) => box.id).sort()).toEqual(calendar.tasks.map((task) => task.id).sort());
    expect(new Set(picture.boxes.map((box) => `${box.column} ${box.row}`)).size).toBe(picture.boxes.length);
    const column = new Map(picture.boxes.map((box) => [box.id, box.column]));
    for (const { from, to } of picture.lines) expect(column.get(from)!).toBeLessThan(column.get(to)!);
  });

  test('its lines say what the prerequisites say: no more, and no less', () => {
    const reach = (next: (id: string) => readonly string[]) => {
      const known = new Map<string, Set<string>>();
      const all = (id: string): Set<string> => {
        const found = known.get(id) ?? new Set(next(id).flatMap((first) => [first, ...all(first)]));
        known.set(id, found);
        return found;
      };
      return all;
    };
    const after = new Map(calendar.tasks.map((task) => [task.id, task.after]));
    const drawn = Map.groupBy(picture.lines, (line) => line.to);
    const meant = reach((id) => after.get(id)!);
    const shown = reach((id) => (drawn.get(id) ?? []).map((line) => line.from));
    for (const { id } of calendar.tasks) expect([...shown(id)].sort()).toEqual([...meant(id)].sort());
  });

  test('the text twin names every task and what it comes after', () => {
    expect(picture.words.length).toBe(calendar.tasks.length);
    expect(picture.words[0]).toMatch(/to begin with/);
  });
});

test('a plan with nothing in it is a strip of one week and an empty picture', () => {
  const calendar = calendarOf(pathOf({}), currentEdition);
  const empty = { ...calendar, stages: [], tasks: [], deliveries: [], out: [] };
  expect(stripOf(empty)).toMatchObject({ length: 1, rows: [], words: [] });
  expect(dependenciesOf(empty)).toEqual({ columns: 0, rows: 0, boxes: [], lines: [], words: [] });
});
