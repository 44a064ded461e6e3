import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addTerms, sortColumn } from '../../../src/calc/cost/columns.ts';
import { BUILDS, shuffled, stratifiedScores } from '../../../src/calc/cost/strata.ts';

const column = fc
  .array(fc.integer({ min: -1e7, max: 1e7 }), { minLength: 1, maxLength: 300 })
  .map((values) => Float64Array.from(values));

test('sorting gives what the built-in sort gives', () => {
  fc.assert(
    fc.property(column, (values) => {
      expect(sortColumn(values)).toEqual(values.slice().sort());
    }),
  );
});

test('sorting 2,000 values with one far away', () => {
  const values = Float64Array.from({ length: BUILDS }, (_, at) => (at * 7919) % 1000);
  values[77] = 1e9;
  expect(sortColumn(values)).toEqual(values.slice().sort());
});

test('sums do not depend on the order of the terms and equal the plain sum', () => {
  const whole = fc.array(fc.integer({ min: 0, max: 1e6 }), { minLength: BUILDS, maxLength: BUILDS });
  const term = fc.record({
    column: whole.map((w) => Float64Array.from(w)),
    times: fc.integer({ min: 0, max: 9 }),
  });
  fc.assert(
    fc.property(fc.array(term, { minLength: 1, maxLength: 7 }), (terms) => {
      const forward = new Float64Array(BUILDS);
      const back = new Float64Array(BUILDS);
      addTerms(forward, terms);
      addTerms(back, [...terms].reverse());
      expect(forward).toEqual(back);
      const at = 1234;
      expect(forward[at]).toBe(terms.reduce((sum, { column: c, times }) => sum + times * c[at]!, 0));
    }),
    { numRuns: 20 },
  );
});

test('every stratum is used exactly once, and names give different orders', () => {
  const scores = stratifiedScores(7, 'a part');
  expect(new Set(scores).size).toBe(BUILDS);
  expect(Math.abs(scores.reduce((sum, score) => sum + score, 0))).toBeLessThan(1e-9);
  expect(shuffled(50, 7, 'one')).not.toEqual(shuffled(50, 7, 'two'));
  expect([...shuffled(50, 7, 'one')].sort((a, b) => a - b)).toEqual(
    Array.from({ length: 50 }, (_, at) => at),
  );
});
