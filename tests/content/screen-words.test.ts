import { expect, test } from 'vitest';
import { misspelled } from '../../scripts/words/spelling.ts';
import { screenStrings } from './screen-strings.ts';

const all = screenStrings.flatMap(({ file, strings }) => strings.map((say) => `${file}: ${say}`));

test('what the screens say is found', () => {
  const said = screenStrings.flatMap(({ strings }) => strings);
  expect(said).toContain('Working out what your parts give back …');
  expect(said.length).toBeGreaterThan(800);
});

/** Names of formats, organisations and currencies. */
const NAMES = ['AACE', 'CSV', 'EUR', 'GBP', 'ics', 'iCalendar', 'JSON', 'UTC', 'UTF', 'USD', 'Unticking'];

test('they are spelt the British way', () => {
  const wrong = screenStrings.flatMap(({ file, strings }) =>
    misspelled(strings.join('\n'))
      .filter((word) => !NAMES.includes(word))
      .map((word) => `${file}: ${word}`),
  );
  expect(wrong).toEqual([]);
});

test('no cry, no blame, no word of an office', () => {
  expect(all.filter((say) => /!(?!=)/.test(say))).toEqual([]);
  const harsh =
    /\b(errors?|invalid|illegal|fail(ed|ure)s?|oops|sorry|wrongly|forbidden|scores?|percentiles?|milestones?|scenarios?|users?|submit|dashboard|wizard|simply|just click|e-?stop)\b/i;
  expect(all.filter((say) => harsh.test(say))).toEqual([]);
});
