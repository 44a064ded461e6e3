import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nothingDone, type Progress, shelfMarks } from '../../src/calc/core/progress.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { decodePath } from '../../src/link/decode.ts';
import { encodePath } from '../../src/link/encode.ts';
import { quickly } from '../cases.ts';

const path = { ...referencePaths[0]!.path, edition: currentEdition.edition };

const id = fc.stringMatching(/^[a-z]{1,8}(-[a-z0-9]{1,6}){0,2}$/);
const day = fc
  .date({ min: new Date('2020-01-01'), max: new Date('2060-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const value = fc.double({ min: -1000, max: 1000, noNaN: true }).map((n) => Number(n.toPrecision(9)) + 0);
const anyProgress: fc.Arbitrary<Progress> = fc.record({
  done: fc.dictionary(id, day, { maxKeys: 12, noNullPrototype: true }),
  values: fc.dictionary(id, fc.array(value, { minLength: 1, maxLength: 4 }), {
    maxKeys: 8,
    noNullPrototype: true,
  }),
  spent: fc.dictionary(
    id,
    fc.integer({ min: 0, max: 400 }).map((n) => n / 4),
    { maxKeys: 8, noNullPrototype: true },
  ),
  notes: fc.constant({}),
  shelf: fc.dictionary(id, fc.uniqueArray(fc.constantFrom(...shelfMarks), { minLength: 1 }), {
    maxKeys: 6,
    noNullPrototype: true,
  }),
});

describe('ticks, readings and hours in a link', () => {
  it('stay out unless they are asked for, and notes always', () => {
    const progress = { ...nothingDone, done: { 'write-job-list': '2027-01-04' }, notes: { x: 'private' } };
    expect(encodePath({ ...path, progress })).toBe(encodePath(path));
    expect(encodePath({ ...path, progress }, { progress: true })).not.toContain('private');
  });

  it('come back as they were, with the path', () => {
    fc.assert(
      fc.property(anyProgress, (progress) => {
        const { path: read, notes } = decodePath(encodePath({ ...path, progress }, { progress: true }));
        expect(notes).toEqual([]);
        const { progress: back = nothingDone, ...rest } = read;
        expect(back).toEqual(progress);
        expect(rest).toEqual(path);
      }),
      { numRuns: quickly(500) },
    );
  });

  it.each([
    'done=x:2027',
    'measured=a:1/b',
    'spent=a:-1',
    'shelf=a:q',
    'done=__proto__:20270101',
    'done=:',
    'spent=a:1e99',
  ])('lists what cannot be read and keeps the rest: %s', (pair) => {
    const { path: read, notes } = decodePath(`${encodePath(path)}&${pair}`);
    expect(notes.length).toBeGreaterThan(0);
    expect(read.answers).toEqual(path.answers);
    expect(({} as Record<string, unknown>).x).toBeUndefined();
  });
});
