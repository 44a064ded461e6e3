import { expect, test } from 'vitest';
import { inputText, writtenText } from '../../../src/islands/working/answer-text.ts';

const weeks = { unit: 'weeks', one: 'week', per: 1 };

test('one of a thing is not many', () => {
  expect([1, 2, 0.5].map((each) => writtenText(each, weeks))).toEqual(['1 week', '2 weeks', '0.5 weeks']);
  expect(inputText(1, weeks)).toBe('1 week');
  expect(writtenText(1 / 60, { unit: 'rpm', per: 60 })).toBe('1 rpm');
});
