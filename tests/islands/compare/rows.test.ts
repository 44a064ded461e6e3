import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Compared, comparisonOf } from '../../../src/calc/comparing.ts';
import { alternatives } from '../../../src/content/alternatives.ts';
import { currentEdition, editionByName } from '../../../src/content/edition.ts';
import { referencePaths } from '../../../src/content/reference-paths.ts';
import { GROUPS, isSame, type RowId, sayCell, sortedRows } from '../../../src/islands/compare/rows.ts';

const bookOf = (edition: string) => editionByName(edition) ?? currentEdition;
const paths = referencePaths.map(({ path }): Compared => ({ kind: 'path', path }));
const others = ['readout', 'change-gears', 'send-out'].map((id): Compared => ({ kind: 'alternative', id }));
const of = (columns: readonly Compared[]) => comparisonOf(columns, bookOf, alternatives).columns;
const every = [...of(paths.slice(0, 4)), ...of([paths[0]!, ...others]).slice(1)];
const rows: RowId[] = GROUPS.flatMap((group) => [...group.rows]);
const some = fc.uniqueArray(fc.nat(every.length - 1), { minLength: 1, maxLength: 4 });

describe('rows of a comparison', () => {
  test('those shown and those hidden are all, each once and in its own group', () => {
    fc.assert(
      fc.property(some, (places) => {
        const sorted = sortedRows(places.map((place) => every[place]!));
        expect(sorted.flatMap(({ differ, same }) => [...differ, ...same]).toSorted()).toEqual(
          rows.toSorted(),
        );
        expect(sorted.map(({ name }) => name)).toEqual(GROUPS.map(({ name }) => name));
      }),
    );
  });

  test('a hidden row says the same in every pair of its columns, and a shown one does not', () => {
    fc.assert(
      fc.property(some, fc.constantFrom(...rows), (places, id) => {
        const columns = places.map((place) => every[place]!);
        const first = columns[0]!;
        const allLikeFirst = columns.every((column) => sayCell(id, column) === sayCell(id, first));
        expect(isSame(id, columns)).toBe(columns.length > 1 && allLikeFirst);
      }),
    );
  });

  test('in which order the columns stand decides nothing', () => {
    fc.assert(
      fc.property(some, (places) => {
        const columns = places.map((place) => every[place]!);
        expect(sortedRows(columns.toReversed())).toEqual(sortedRows(columns));
      }),
    );
  });

  test('a path beside itself differs in nothing; a path alone hides nothing', () => {
    const [first] = of([paths[0]!]);
    expect(sortedRows([first!, first!]).flatMap(({ differ }) => differ)).toEqual([]);
    expect(sortedRows([first!]).flatMap(({ same }) => same)).toEqual([]);
  });
});
