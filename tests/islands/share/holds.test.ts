import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Path } from '../../../src/calc/core/path.ts';
import { emptyPath } from '../../../src/calc/core/path.ts';
import { nothingDone } from '../../../src/calc/core/progress.ts';
import { pricesHeld, progressHeld, saidAnswers, saidOthers } from '../../../src/islands/share/holds.ts';
import { lengths, saidLength } from '../../../src/islands/share/length.ts';
import { encodePath } from '../../../src/link/encode.ts';
import { anyOwn } from '../../export/own.ts';

const empty = emptyPath('2026-12');

describe('what a link holds, in words', () => {
  it('counts answers, figures and parts', () => {
    const path: Path = {
      ...empty,
      answers: { control: ['motion-card-pc'], cable: [], chuck: ['x'] },
      facts: { swing: 0.25 },
      owned: ['dial-indicator', 'spare-fuses'],
    };
    expect(saidAnswers(path)).toBe(
      '3 answers, 1 of them “not sure yet”, 1 figure of the lathe and 2 parts in the drawer',
    );
    expect(saidAnswers(empty)).toBe('no answers yet');
  });

  it('names what stands beside the first path', () => {
    const others = [
      { kind: 'path', path: empty },
      { kind: 'path', path: empty },
      { kind: 'alternative', id: 'readout' },
    ] as const;
    expect(saidOthers(others)).toBe('2 more paths and 1 alternative');
    expect(saidOthers([])).toBe('');
  });

  it('lists something private exactly where the link would carry it', () => {
    fc.assert(
      fc.property(anyOwn, (own) => {
        const path = { ...empty, ...own };
        expect(pricesHeld(path).length > 0).toBe(encodePath(path, { prices: true }) !== encodePath(path));
      }),
      { numRuns: 300 },
    );
    const done = { ...empty, progress: { ...nothingDone, done: { 'write-job-list': '2027-01-04' } } };
    expect(progressHeld(done)).toEqual(['1 tick with its day']);
    for (const marks of [
      nothingDone,
      { ...nothingDone, notes: { x: 'y' }, shelf: { x: [] }, values: { x: [] } },
    ])
      expect(progressHeld({ ...empty, progress: marks })).toEqual([]);
  });
});

it.each([
  [lengths.everywhere, /everywhere/],
  [lengths.everywhere + 1, /Some messages/],
  [lengths.mostly + 1, /Many messages.*file/],
  [lengths.most + 1, /Send the file/],
])('a link of %d characters is told what becomes of it', (length, said) => {
  expect(saidLength(length)).toMatch(said);
});
