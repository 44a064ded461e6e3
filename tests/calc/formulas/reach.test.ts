import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barOverhang, gangTools, gangTravel } from '../../../src/calc/formulas/reach.ts';

const gang = { toolPitch: 0.035, partRadius: 0.01, clearance: 0.005, pastCentre: 0.0015 };

describe('tools 35 mm apart on 95 mm of travel, worked by hand, no published source', () => {
  test.each([
    [2, 51.5],
    [3, 86.5],
    [4, 121.5],
  ])('%d tools need %d mm', (tools, millimetre) => {
    expect(gangTravel.compute({ tools, ...gang }) * 1000).toBeCloseTo(millimetre, 9);
  });

  test('three fit, the fourth does not', () => {
    expect(gangTools.compute({ travel: 0.12 - 0.025, ...gang })).toBe(3);
  });
});

test('the travel for a number of tools serves exactly that number', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 10, max: 80 }), (tools, apart) => {
      const spaced = { ...gang, toolPitch: apart / 1000 };
      const travel = gangTravel.compute({ tools, ...spaced });
      expect(gangTools.compute({ travel, ...spaced })).toBe(tools);
    }),
  );
});

test('no tool fits a travel shorter than the work', () => {
  expect(gangTools.compute({ travel: 0.01, ...gang })).toBe(0);
});

test('300 mm of 20 mm bar is 15 diameters', () => {
  expect(barOverhang.compute({ overhang: 0.3, diameter: 0.02 })).toBeCloseTo(15, 12);
});
