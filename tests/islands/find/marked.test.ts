import { expect, test } from 'vitest';
import { fold, wordsOf } from '../../../src/islands/find/fold.ts';
import { marked } from '../../../src/islands/find/marked.ts';

test.each([
  ['Screws', 'screw'],
  ['bodies', 'body'],
  ['bushes', 'bush'],
  ['boss', 'boss'],
  ['bus', 'bus'],
  ['axis', 'axis'],
  ['centers', 'centre'],
  ['Aluminum', 'aluminium'],
  ['magnetized', 'magnetised'],
  ['size', 'sise'],
  ['lathe’s', 'lathe'],
])('%s is folded to %s', (word, folded) => {
  expect(fold(word)).toBe(folded);
});

test('a hyphen parts two words, an apostrophe does not', () => {
  expect(wordsOf('the half-nut’s 5 mm')).toEqual(['the', 'half', 'nut’s', '5', 'mm']);
});

test('words found are marked in whatever form they stand', () => {
  expect(marked('Two screws, one nut.', ['screw'])).toEqual([
    { text: 'Two', hit: false },
    { text: ' ', hit: false },
    { text: 'screws', hit: true },
    { text: ', ', hit: false },
    { text: 'one', hit: false },
    { text: ' ', hit: false },
    { text: 'nut', hit: false },
    { text: '.', hit: false },
  ]);
});

test('of a long text the part around the first word found is shown, in whole words', () => {
  const text = `${'before '.repeat(60)}belt ${'after '.repeat(60)}`;
  const line = marked(text, ['belt'])
    .map((run) => run.text)
    .join('');
  expect(line).toMatch(/^… before .*before belt after .*after …$/);
  expect(line.length).toBeLessThan(230);
});
