// The grade of a text by Flesch and Kincaid. The source stands beside each check.
import { fleschKincaid } from 'flesch-kincaid';
import { expect, test } from 'vitest';
import { readingOf } from '../../scripts/words/grade.ts';

// Wikipedia, "Flesch–Kincaid readability tests", grade level: this sentence has 13 words, 24 syllables, and scores 11.3.
const platypus = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.';

test('the grade of the printed example, from its printed counts', () => {
  expect(fleschKincaid({ sentence: 1, word: 13, syllable: 24 })).toBeCloseTo(11.3, 1);
});

test('our count of its words is the printed one; of its syllables at most a tenth more, so the grade errs to the hard side', () => {
  const { sentences, words, grade } = readingOf([platypus]);
  expect([sentences, words]).toEqual([1, 13]);
  const syllables = ((grade + 15.59 - 0.39 * words) / 11.8) * words;
  expect(syllables).toBeGreaterThanOrEqual(23.999);
  expect(syllables).toBeLessThan(24 * 1.1);
});
