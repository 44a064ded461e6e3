import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calendarOf } from '../../../src/calc/working.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { BOX, pictureOf, wrapped } from '../../../src/islands/calendar/picture.ts';

describe('words in a box', () => {
  test('no word is lost while there are lines enough, and no line is longer than its longest word', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1 }), (words) => {
        const lines = wrapped(words.join(' '), 20, words.length);
        expect(lines.join(' ')).toBe(words.join(' '));
        expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(20);
      }),
    );
  });

  test('what does not fit ends in an ellipsis', () => {
    expect(wrapped('one two three four', 7, 1)).toEqual(['one tw…']);
  });
});

describe('the picture of a stage', () => {
  const { tasks, stages } = calendarOf(referencePaths[0]!.path, currentEdition);
  const pictures = stages.map(({ id }) =>
    pictureOf(
      tasks.filter(({ stage }) => stage === id),
      ({ name }) => name,
    ),
  );

  test('every task has a box inside the picture, and no two boxes lie on each other', () => {
    expect(pictures.flatMap(({ boxes }) => boxes)).toHaveLength(tasks.length);
    for (const { boxes, width, height } of pictures)
      for (const [at, box] of boxes.entries()) {
        expect(box.x + BOX.wide).toBeLessThanOrEqual(width);
        expect(box.y + BOX.high).toBeLessThanOrEqual(height);
        for (const other of boxes.slice(at + 1))
          expect(Math.abs(box.x - other.x) >= BOX.wide || Math.abs(box.y - other.y) >= BOX.high).toBe(true);
      }
  });

  test('lines lead downwards', () => {
    for (const { lines, boxes } of pictures)
      for (const { key } of lines) {
        const [from, to] = key.split(' ').map((id) => boxes.find((box) => box.id === id)!);
        expect(to!.y).toBeGreaterThan(from!.y);
      }
  });
});
