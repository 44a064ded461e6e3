import { expect, test } from 'vitest';
import { outsideRange } from '../../../src/calc/core/formula.ts';
import { usableTorqueFraction } from '../../../src/calc/formulas/motor.ts';
import { formulaById, formulas } from '../../../src/calc/formulas/registry.ts';

test('a formula is found by its id, and an unknown one is a mistake', () => {
  for (const formula of formulas) expect(formulaById(formula.id)).toBe(formula);
  expect(() => formulaById('perpetual-motion')).toThrow('perpetual-motion');
});

test('an input outside what the source speaks of is named', () => {
  expect(outsideRange(usableTorqueFraction, { speed: 10 })).toEqual([]);
  expect(outsideRange(usableTorqueFraction, { speed: 20 })).toEqual(['speed']);
});
