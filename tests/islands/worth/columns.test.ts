import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CONVERSION } from '../../../src/calc/core/alternative.ts';
import { PLACES, pileUp, rowEnd } from '../../../src/islands/beside/shared-scale.ts';
import { MOST_COLUMNS, swapped } from '../../../src/islands/beside/words.ts';
import { firstColumns, ticked } from '../../../src/islands/worth/beside/columns.ts';

const order = ['turret', CONVERSION, 'send-out', 'readout', 'dies'];

describe('columns', () => {
  test('the own plan and the first of the rest, in their order', () => {
    expect(firstColumns(order)).toEqual(['turret', CONVERSION, 'send-out', 'readout']);
    expect(firstColumns(['a', 'b', 'c', 'd', CONVERSION])).toEqual(['a', 'b', 'c', CONVERSION]);
    expect(firstColumns(order, 2)).toEqual(['turret', CONVERSION]);
  });

  test('a tick adds in order; never a fifth, never none', () => {
    expect(ticked(order, ['dies', 'turret'], 'readout', true)).toEqual(['turret', 'readout', 'dies']);
    expect(ticked(order, firstColumns(order), 'dies', true)).toEqual(firstColumns(order));
    expect(ticked(order, ['dies'], 'dies', false)).toEqual(['dies']);
    expect(firstColumns(order)).toHaveLength(MOST_COLUMNS);
  });

  test('a picker that takes what stands on the other side changes sides', () => {
    expect(swapped(['a', 'b'], 0, 'c')).toEqual(['c', 'b']);
    expect(swapped(['a', 'b'], 0, 'b')).toEqual(['b', 'a']);
    expect(swapped(['a', 'b'], 1, 'b')).toEqual(['a', 'b']);
  });
});

describe('rods of one row', () => {
  test('share a scale from nothing to a round end that holds them all', () => {
    expect(rowEnd([[10, 900], [4200]])).toBe(6000);
    expect(rowEnd([[0], [0]])).toBe(1);
  });

  test('no washer is lost, none lies on another, and a larger one never lies further left', () => {
    const values = fc.array(fc.double({ min: 0, max: 1e5, noNaN: true }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(values, (unsorted) => {
        const sorted = unsorted.toSorted((a, b) => a - b);
        const piled = pileUp(sorted, rowEnd([sorted]));
        expect(new Set(piled.map(({ place, row }) => `${place} ${row}`)).size).toBe(sorted.length);
        expect(piled.every(({ place }) => place >= 0 && place < PLACES)).toBe(true);
        expect(piled.map(({ place }) => place)).toEqual(
          piled.map(({ place }) => place).toSorted((a, b) => a - b),
        );
      }),
    );
  });
});
