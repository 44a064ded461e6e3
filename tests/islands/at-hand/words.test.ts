import { expect, test } from 'vitest';
import { said } from '../../../src/islands/at-hand/words.ts';

test('says how much is kept, and what may be done about it', () => {
  expect(said('kept', 8_140_000)).toEqual({
    text: 'Kept for the workshop, 8.1 MB: it opens without a connection.',
    press: 'Drop it',
  });
  expect(said('not-kept', 8_150_001).press).toBe('Keep it for the workshop, 8.2 MB');
  expect(said('not-kept').press).toBe('Keep it for the workshop');
});

test('offers nothing while nothing can be done', () => {
  expect(said('being-kept').press).toBeUndefined();
  expect(said('not-whole').press).toBeUndefined();
});
