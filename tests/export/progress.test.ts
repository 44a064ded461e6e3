// What is done, measured and spent goes into a file and comes back; what cannot be read is said.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nothingDone, type Progress, shelfMarks } from '../../src/calc/core/progress.ts';
import { readings } from '../../src/calc/schedule/readings.ts';
import { shelfRows } from '../../src/calc/schedule/shelf.ts';
import { taskIndex } from '../../src/calc/trade.ts';
import { progressToFile, readProgress } from '../../src/export/progress.ts';

const day = fc
  .integer({ min: 0, max: 30_000 })
  .map((days) => new Date(days * 86_400_000).toISOString().slice(0, 10));
const task = fc.constantFrom(...taskIndex.keys(), 'gone-for-good');
const anyProgress: fc.Arbitrary<Progress> = fc.record({
  done: fc.dictionary(task, day),
  values: fc.dictionary(
    fc.constantFrom(...readings.map((reading) => reading.id)),
    fc.array(
      fc.double({ min: -1, max: 1, noNaN: true }).map((value) => value + 0),
      { maxLength: 6 },
    ),
  ),
  spent: fc.dictionary(task, fc.double({ min: 0, max: 500, noNaN: true })),
  notes: fc.dictionary(task, fc.string({ maxLength: 200 })),
  shelf: fc.dictionary(fc.constantFrom(...shelfRows.map((row) => row.id)), fc.subarray([...shelfMarks])),
});

test('any progress comes back from its file as it was, with nothing to say', () => {
  fc.assert(
    fc.property(anyProgress, (progress) => {
      const file = JSON.parse(JSON.stringify(progressToFile(progress)));
      expect(readProgress(file)).toEqual({ progress, notes: [] });
    }),
  );
});

test('the same job is written in the same order, and nothing done is an empty file', () => {
  const a = { ...nothingDone, done: { b: '2027-01-02', a: '2027-01-01' } };
  const b = { ...nothingDone, done: { a: '2027-01-01', b: '2027-01-02' } };
  expect(JSON.stringify(progressToFile(a))).toBe(JSON.stringify(progressToFile(b)));
  expect(progressToFile(nothingDone)).toEqual({});
  expect(readProgress(undefined)).toEqual({ progress: nothingDone, notes: [] });
});

test('one bad entry is said and left out, the others stay', () => {
  const { progress, notes } = readProgress({
    done: { 'write-job-list': '2027-02-30', 'condition-survey': '2027-02-03' },
    values: { 'bed-wear': ['0.02'], 'spindle-lift': [0.00002] },
    spent: { 'condition-survey': -1 },
    shelf: { riser: ['made', 'made', 'measured'], spacers: ['painted'] },
    songs: {},
    notes: 'all well',
  });
  expect(progress).toEqual({
    ...nothingDone,
    done: { 'condition-survey': '2027-02-03' },
    values: { 'spindle-lift': [0.00002] },
    shelf: { riser: ['made', 'measured'] },
  });
  expect(notes).toEqual([
    '“songs” is no part of a job’s progress. It was left out.',
    '“write-job-list” in “done” is not a day such as 2027-03-01. It was left out.',
    '“bed-wear” in “values” is not a list of numbers. It was left out.',
    '“condition-survey” in “spent” is not hours from nought upwards. It was left out.',
    '“notes” is not a group of entries. It was left out.',
    '“spacers” in “shelf” is not any of drawing, made, measured, spare, photo. It was left out.',
  ]);
});

test('whatever stands there, it is read without a throw', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (raw) => {
      const { progress } = readProgress(raw);
      expect(Object.keys(progress).sort()).toEqual(['done', 'notes', 'shelf', 'spent', 'values']);
    }),
  );
});

test('too many entries are cut off, and it is said', () => {
  const done = Object.fromEntries(Array.from({ length: 500 }, (_, at) => [`task-${at}`, '2027-01-01']));
  const { progress, notes } = readProgress({ done });
  expect(Object.keys(progress.done).length).toBe(400);
  expect(notes).toEqual(['“done” has 500 entries; the first 400 were read.']);
});
