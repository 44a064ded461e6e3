import { describe, expect, test } from 'vitest';
import { keyOf } from '../../../src/islands/calendar/SaveCalendar.tsx';
import {
  extraWords,
  inHours,
  inMoney,
  inWeeks,
  momentWords,
  weekWords,
} from '../../../src/islands/calendar/words.ts';

describe('what one order of work takes more than the other', () => {
  test('more, less, and across zero are told apart', () => {
    expect(extraWords({ p10: 70, p50: 130, p90: 200 }, inMoney)).toBe(
      'typically $130 more; $70–200 more in 16 of 20 ways',
    );
    expect(extraWords({ p10: -9, p50: -6, p90: -4 }, inHours)).toBe(
      'typically 6 h less; 4–9 h less in 16 of 20 ways',
    );
    expect(extraWords({ p10: -3, p50: 1, p90: 5 }, inWeeks)).toBe(
      'no clear difference: from 3 weeks less to 5 weeks more in 16 of 20 ways',
    );
  });

  test('an end at zero is the same, and the same everywhere is no difference', () => {
    expect(extraWords({ p10: -3, p50: -1, p90: 0 }, inWeeks)).toBe(
      'no clear difference: from 3 weeks less to the same in 16 of 20 ways',
    );
    expect(extraWords({ p10: 0, p50: 0, p90: 0 }, inMoney)).toBe('no difference');
  });
});

test('moments are dates where there is a first day', () => {
  expect(momentWords(8.4)).toBe('week 8');
  expect(momentWords(0.2)).toBe('on the first day');
  expect(momentWords(8.4, '2027-03-04')).toBe('2027-03-04');
  expect(weekWords(1.7, 11.4)).toBe('week 2–11');
  expect(weekWords(7.1, 7.4)).toBe('week 7');
});

test('the key of a plan is fit for an address', () => {
  expect(keyOf('Both slides; strip it once (and do all)')).toBe('both-slides-strip-it-once-and-do-all');
});
