import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assumed, type Quantity } from '../../../src/calc/core/quantity.ts';
import {
  differenceOf,
  largestOf,
  productOf,
  quotientOf,
  smallestOf,
  steps,
  sumOf,
} from '../../../src/calc/core/steps.ts';

const force = (value: number): Quantity => assumed(value, 'N', 'set for a test');
const [two, three, seven] = [force(2), force(3), force(7)];

describe('worked by hand, no published source', () => {
  test.each([
    ['sum', sumOf({ two, three, seven }), 12],
    ['largest', largestOf({ two, seven, three }), 7],
    ['smallest', smallestOf({ three, two, seven }), 2],
    ['difference', differenceOf(two, seven), -5],
    ['product', productOf('N', { two, three, seven }), 42],
    ['quotient', quotientOf('N', seven, two), 3.5],
  ] as const)('%s', (id, made, value) => {
    expect(made).toMatchObject({ value, unit: 'N', origin: { kind: 'derived', formula: id } });
    expect(steps[id].equation).not.toBe('');
  });
});

test('the terms are kept by name, so that an explanation can follow them', () => {
  expect(sumOf({ two, three })?.origin).toEqual({
    kind: 'derived',
    formula: 'sum',
    inputs: { two, three },
  });
  expect(differenceOf(seven, two)?.origin).toMatchObject({ inputs: { from: seven, less: two } });
  expect(quotientOf('1', seven, two)?.origin).toMatchObject({ inputs: { of: seven, by: two } });
});

test('the unit comes from the first term, or from the caller', () => {
  const time = assumed(4, 's', 'set for a test');
  expect(largestOf({ time })?.unit).toBe('s');
  expect(differenceOf(time, time)?.unit).toBe('s');
  expect(productOf('N·m', { two, time })?.unit).toBe('N·m');
  expect(quotientOf('m/s', two, time)?.unit).toBe('m/s');
});

test('a missing term leaves nothing, and so does no term at all', () => {
  const missing = undefined;
  for (const step of [sumOf, largestOf, smallestOf]) {
    expect(step({ two, missing })).toBeUndefined();
    expect(step({ missing })).toBeUndefined();
    expect(step({})).toBeUndefined();
  }
  expect(productOf('N', { two, missing })).toBeUndefined();
  expect(productOf('N', {})).toBeUndefined();
  expect(differenceOf(missing, two)).toBeUndefined();
  expect(differenceOf(two, missing)).toBeUndefined();
  expect(quotientOf('1', two, missing)).toBeUndefined();
});

test('what is no figure is nothing: divided by nothing, or endless', () => {
  expect(quotientOf('1', two, force(0))).toBeUndefined();
  expect(sumOf({ two, endless: force(Number.POSITIVE_INFINITY) })).toBeUndefined();
});

test('a sum less one of its parts is the other, and a product over one of its parts too', () => {
  const size = fc.double({ min: 1e-3, max: 1e3, noNaN: true }).map(force);
  fc.assert(
    fc.property(size, size, (one, other) => {
      expect(differenceOf(sumOf({ one, other }), one)?.value).toBeCloseTo(other.value, 9);
      const back = quotientOf('N', productOf('N', { one, other }), one)!;
      expect(back.value / other.value).toBeCloseTo(1, 12);
    }),
  );
});
