import { expect, test } from 'vitest';
import { readingOf } from '../../scripts/words/grade.ts';
import { sectionsOf } from '../../scripts/words/plain-text.ts';
import { sections, whys } from '../../scripts/words/texts.ts';

/** A reader of fourteen: school grade and five or six years more. */
const MOST = 9;
const tooHard = (texts: typeof sections): string[] =>
  texts
    .map(({ where, blocks }) => ({ where, grade: readingOf(blocks).grade }))
    .filter(({ grade }) => !(grade <= MOST))
    .map(({ where, grade }) => `${where}: grade ${grade.toFixed(1)}`);

test('no section of the book is harder to read than at fourteen', () => {
  expect(sections.length).toBeGreaterThan(27 * 4);
  expect(tooHard(sections)).toEqual([]);
});

test('nor is the why of a question', () => {
  expect(tooHard(whys)).toEqual([]);
});

test('paragraphs and items of lists are read, tables and pieces are not', () => {
  const page =
    '---\ntitle: "x"\n---\n\n## One\n\nA **plain** [word](#a).\n\n- First\n- Second\n\n| a | b |\n| - | - |\n\n<Working figure="x" />\n';
  expect(sectionsOf(page)).toEqual([{ heading: 'One', blocks: ['A plain word.', 'First', 'Second'] }]);
});

test('a longer sentence and longer words are harder', () => {
  const plain = readingOf(['The nut turns. The screw stands still.']).grade;
  expect(readingOf(['The nut turns while the screw stands still.']).grade).toBeGreaterThan(plain);
  expect(readingOf(['The mechanism rotates. The screw stands still.']).grade).toBeGreaterThan(plain);
});
