import { describe, expect, test } from 'vitest';
import { formulas } from '../../src/calc/formulas/registry.ts';
import { halfLastDigit, tolerance } from './row.ts';
import { rows } from './rows.ts';

describe('published figures', () => {
  test.each(rows.map((row) => [`${row.formula}: ${row.what}`, row] as const))('%s', (_, row) => {
    expect(Math.abs(row.ours - Number(row.printed))).toBeLessThanOrEqual(tolerance(row));
  });

  test('the last printed digit sets the tolerance', () => {
    expect(['3630', '26.1', '1.71e5', '4.1e9'].map(halfLastDigit)).toEqual([0.5, 0.05, 500, 5e7]);
  });
});

describe('the registry', () => {
  test('ids are unique', () => {
    expect(new Set(formulas.map(({ id }) => id)).size).toBe(formulas.length);
  });

  test.each(formulas.map((formula) => [formula.id, formula] as const))(
    '%s has a published row, or says why not',
    (id, formula) => {
      const published = rows.some((row) => row.formula === id);
      expect(published || (formula.unverified ?? '') !== '').toBe(true);
      expect(published && formula.unverified !== undefined, 'both published and unverified').toBe(false);
    },
  );

  test('every row checks a formula of the registry', () => {
    const ids = new Set(formulas.map(({ id }) => id));
    expect(rows.filter((row) => !ids.has(row.formula))).toEqual([]);
  });
});
