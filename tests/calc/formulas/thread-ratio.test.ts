// Worked by hand, no published source: pulses for whole turns of the spindle, as whole numbers.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { threadRoundingError, threadStepRatio } from '../../../src/calc/formulas/thread-ratio.ts';
import { near } from './near.ts';

const eightToTheInch = 0.0254 / 8;
const ratio = (pitch: number, lead = eightToTheInch, stepsPerTurn = 1600) =>
  threadStepRatio.compute({ stepsPerTurn, pitch, lead });

describe('a lead screw of 8 to the inch, 1,600 pulses a turn', () => {
  test('metric threads carry the 127', () => {
    expect(ratio(0.0015)).toEqual({ steps: 96000, turns: 127 });
    expect(ratio(0.003)).toEqual({ steps: 192000, turns: 127 });
  });

  test('20 to the inch is a whole number, 11 to the inch a fraction of 11', () => {
    expect(ratio(0.0254 / 20)).toEqual({ steps: 640, turns: 1 });
    expect(ratio(0.0254 / 11)).toEqual({ steps: 12800, turns: 11 });
  });

  test('756 for 755.9055 is 3.75 µm out after 30 mm', () => {
    near(threadRoundingError.compute({ ...ratio(0.0015), length: 0.03 }), 3.75e-6);
  });
});

test('a lead screw of 11 to the inch carries the 11 over', () => {
  expect(ratio(0.0015, 0.0254 / 11)).toEqual({ steps: 132000, turns: 127 });
});

test('the largest divisor is 127, and nothing is no pitch', () => {
  expect(ratio(0.0254, 0.0254, 80000 / 127)).toEqual({ steps: 80000, turns: 127 });
  expect(ratio(0.0254, 0.0254, 80000 / 131).steps).toBeNaN();
  expect(ratio(0).steps).toBeNaN();
});

test('a belt of 20 to 36 teeth and a metric screw', () => {
  expect(ratio(0.00175, 0.005, (1600 * 36) / 20)).toEqual({ steps: 1008, turns: 1 });
});

test('no fraction fits: no answer rather than a rounded one', () => {
  expect(ratio(0.0015, eightToTheInch, 1600 * Math.SQRT2).steps).toBeNaN();
});

test('the ratio is the quotient, without a common divisor', () => {
  const microns = (most: number) => fc.integer({ min: 200, max: most });
  fc.assert(
    fc.property(microns(12000), microns(12700), fc.integer({ min: 200, max: 6400 }), (pitch, lead, turn) => {
      const { steps, turns } = ratio(pitch / 1e6, lead / 1e6, turn);
      expect(steps / turns).toBeCloseTo((turn * pitch) / lead, 6);
      const smaller = (a: number, b: number): number => (b === 0 ? a : smaller(b, a % b));
      expect(smaller(steps, turns)).toBe(1);
    }),
  );
});
