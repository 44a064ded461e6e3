// The stored builds against plain draws of the same bands. `npm run bench -- --slow` does it with a million.
import { describe, expect, test } from 'vitest';
import { pathsToTry } from '../../../scripts/paths-to-try.ts';
import { distances, wayOf } from '../../../scripts/plain-draws.ts';
import { editionOf } from '../../../src/calc/cost/edition.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { quickly } from '../../cases.ts';

const DRAWS = 100_000;
/** The five reference paths and five random ones; the bench tries all twenty-five. */
const PATHS = quickly(10);
/** Standard errors of the plain draws allowed: with 150 comparisons one in 30,000 by chance is far enough. */
const ERRORS = 4;

const edition = editionOf(currentEdition);

describe('P10, P50 and P90 within 1 % of plain draws', () => {
  test.each(
    pathsToTry(currentEdition.edition)
      .slice(0, PATHS)
      .map(({ name, path }, at) => ({ name, path, at })),
  )(
    '$name',
    ({ path, at }) => {
      for (const { what, ours, plain, error } of distances(wayOf(path, edition), edition, DRAWS, at + 1)) {
        expect(Math.abs(ours - plain), what).toBeLessThan(0.01 * plain + ERRORS * error);
      }
    },
    120_000,
  );
});
