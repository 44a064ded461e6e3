import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Compared } from '../../src/calc/core/compared.ts';
import { factById } from '../../src/calc/facts.ts';
import { decisionById } from '../../src/calc/guide.ts';
import { alternatives } from '../../src/content/alternatives.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { encodeComparison } from '../../src/link/comparison.ts';
import { decodeComparison, decodePath } from '../../src/link/decode.ts';
import { encodePath } from '../../src/link/encode.ts';
import { anyPath } from '../arbitrary.ts';
import { quickly } from '../cases.ts';

const column = fc.oneof(
  anyPath.map((path): Compared => ({ kind: 'path', path })),
  fc.constantFrom(...alternatives).map(({ id }): Compared => ({ kind: 'alternative', id })),
);
const said = (columns: readonly Compared[]) =>
  columns.map((each) => (each.kind === 'path' ? encodePath(each.path) : each.id));

describe('a comparison in one link', () => {
  it('comes back as it was', () => {
    fc.assert(
      fc.property(anyPath, fc.array(column, { maxLength: 3 }), (first, others) => {
        const read = decodeComparison(encodeComparison(first, others));
        expect(read.notes).toEqual([]);
        expect(encodePath(read.first)).toBe(encodePath(first));
        expect(said(read.others)).toEqual(said(others));
      }),
      { numRuns: quickly(1000) },
    );
  });

  it('survives a message that escapes what stands between the columns', () => {
    const [first, second] = referencePaths;
    const link = encodeComparison(first!.path, [{ kind: 'path', path: second!.path }]);
    expect(said(decodeComparison(link.replaceAll(';', '%3B')).others)).toEqual([encodePath(second!.path)]);
  });

  it('of paths that are alike ends on no bare mark', () => {
    const { path } = referencePaths[0]!;
    const link = encodeComparison(path, [{ kind: 'path', path }]);
    expect(link).toMatch(/;size=medium$/);
    expect(said(decodeComparison(link).others)).toEqual([encodePath(path)]);
  });

  it('holds four fully answered paths in under 4,000 characters', () => {
    const [first, ...others] = referencePaths.slice(0, 4).map(({ path }) => path);
    const link = encodeComparison(
      first!,
      others.map((path) => ({ kind: 'path', path })),
    );
    expect(link.length).toBeLessThan(4000);
  });

  it('opens on any other page with its first path', () => {
    const [first, second] = referencePaths;
    const link = encodeComparison(first!.path, [{ kind: 'path', path: second!.path }]);
    expect(decodePath(`#${link}`)).toEqual(decodePath(encodePath(first!.path)));
  });

  it('names what of it cannot be read, and by which column', () => {
    const { first, others, notes } = decodeComparison(
      '1?control=motion-card-pc&size=small;alternative=magic;control=none-such;alternative=readout;size=large',
    );
    expect(first.answers.control).toEqual(['motion-card-pc']);
    expect(others).toHaveLength(2);
    expect(notes.map(({ say }) => say)).toEqual([
      expect.stringMatching(/^Column B: “magic”/),
      expect.stringMatching(/^Column C: .*“none-such”/),
      expect.stringMatching(/holds 1 more/),
    ]);
  });

  it('never throws, whatever stands in it', () => {
    const piece = fc.constantFrom(
      ';',
      '&',
      '=',
      'without',
      'alternative',
      'readout',
      'control',
      '%',
      ',',
      'x',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(piece, fc.string()), { maxLength: 12 }), (pieces) => {
        const { others } = decodeComparison(`1?${pieces.join('')}`);
        expect(others.length).toBeLessThanOrEqual(3);
      }),
      { numRuns: quickly(2000) },
    );
  });

  it('uses words that are no question and no figure', () => {
    for (const word of ['without', 'alternative', 'name']) {
      expect(decisionById(word)).toBeUndefined();
      expect(factById(word)).toBeUndefined();
    }
  });
});
