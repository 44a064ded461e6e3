import { expect, test } from 'vitest';
import { nothingDone } from '../../../src/calc/core/progress.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { answerTo } from '../../../src/islands/ask/answers.ts';
import { today } from '../../../src/islands/buy/day.ts';

const path = { ...referencePaths[0]!.path, edition: currentEdition.edition };
const progress = { ...nothingDone, done: { 'write-job-list': '2020-01-06' } };

test('what is left of a job under way counts from today, or from a first day still to come', async () => {
  const before = today();
  const { start } = await answerTo('calendar', { ...path, start: '2020-01-06', progress }, undefined);
  expect([before, today()]).toContain(start);
  expect((await answerTo('calendar', { ...path, start: '2099-01-05', progress }, undefined)).start).toBe(
    '2099-01-05',
  );
});

test('a job not begun keeps the day it was given', async () => {
  expect((await answerTo('calendar', { ...path, start: '2020-01-06' }, undefined)).start).toBe('2020-01-06');
  expect((await answerTo('calendar', path, undefined)).start).toBeUndefined();
});
