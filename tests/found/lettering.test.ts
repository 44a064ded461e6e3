import { describe, expect, test } from 'vitest';
import { decisions, rooms } from '../../src/calc/guide.ts';
import { inventedOwners } from '../../src/content/invented-owners.ts';
import { strokesOf, widthOf, wrapped } from '../../src/found/lettering.ts';

const ends = (d: string): number[][] =>
  [...d.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);

describe('letters as strokes', () => {
  test('a capital stands on its line and is as high as asked', () => {
    const rows = ends(strokesOf('H', { x: 0, y: 100, size: 42 })).map(([, y]) => y!);
    expect(Math.max(...rows)).toBe(100);
    expect(Math.min(...rows)).toBe(58);
  });

  test('a line ends or centres where it is anchored', () => {
    const across = (anchor: 'start' | 'middle' | 'end') =>
      ends(strokesOf('HH', { x: 200, y: 0, size: 21, anchor })).map(([x]) => x!);
    expect(Math.min(...across('start'))).toBeGreaterThan(200);
    expect(Math.max(...across('end'))).toBeLessThan(200);
    const middle = across('middle');
    expect((Math.min(...middle) + Math.max(...middle)) / 2).toBe(200);
  });

  test('lines are no wider than the column and lose no word', () => {
    const text = 'What drops the drives when the computer hangs?';
    const lines = wrapped(text, 300, 30);
    expect(lines.join(' ')).toBe(text);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.filter((line) => widthOf(line, 30) > 300)).toEqual([]);
  });

  test('a sign that is not there is named, never left out', () => {
    expect(() => strokesOf('Ж', { x: 0, y: 0, size: 10 })).toThrow('“Ж”');
  });

  test('every heading of a question, a room and an owner can be lettered', () => {
    const headings = [
      ...decisions.map(({ ask }) => ask),
      ...rooms.map(({ name }) => name),
      ...inventedOwners.map(({ name }) => name),
    ];
    expect(headings.filter((text) => !(widthOf(text, 20) > 0))).toEqual([]);
  });
});
