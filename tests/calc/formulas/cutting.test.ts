import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cuttingForce,
  specificCuttingForce,
  spindleSpeedFor,
  surfaceSpeed,
} from '../../../src/calc/formulas/cutting.ts';
import { cuttingMaterial, cuttingMaterials } from '../../../src/calc/formulas/cutting-materials.ts';
import { feedForce, passiveForce, toolHeightError } from '../../../src/calc/formulas/tool-forces.ts';

const degrees = (angle: number) => (angle * Math.PI) / 180;

describe('worked by hand, no published source', () => {
  test.each([
    ['chrome-molybdenum-steel', 1, 0.1, 95, 455],
    ['steel-st42', 1, 0.15, 90, 369],
    ['aluminium-aged', 1, 0.15, 90, 193],
    ['stainless-austenitic', 0.5, 0.1, 95, 170.5],
  ])('%s, %d mm deep at %d mm a turn, %d°: %d N', (id, depth, feed, angle, newton) => {
    const { kc11, mc } = cuttingMaterial(id)!;
    const force = cuttingForce.compute({
      kc11,
      mc,
      depth: depth / 1000,
      feed: feed / 1000,
      enteringAngle: degrees(angle),
    });
    expect(Math.abs(force / newton - 1)).toBeLessThan(0.002);
  });

  test('a tool 0.2 mm off centre, set right at 20 mm, leaves 3 mm work 0.023 mm too thick', () => {
    const error = toolHeightError.compute({ heightOffset: 0.0002, zeroDiameter: 0.02, diameter: 0.003 });
    expect(error * 1000).toBeCloseTo(0.0226, 4);
  });

  test('feed and passive force are shares of the cutting force', () => {
    expect(feedForce.compute({ cuttingForce: 855, ratio: 0.5 })).toBeCloseTo(427.5, 9);
    expect(passiveForce.compute({ cuttingForce: 855, ratio: 0.25 })).toBeCloseTo(213.75, 9);
  });
});

test('surface speed and spindle speed are each the inverse of the other', () => {
  const size = fc.double({ min: 0.001, max: 0.5, noNaN: true });
  const turning = fc.double({ min: 0.1, max: 100, noNaN: true });
  fc.assert(
    fc.property(size, turning, (diameter, speed) => {
      const back = spindleSpeedFor.compute({
        surfaceSpeed: surfaceSpeed.compute({ diameter, speed }),
        diameter,
      });
      expect(back / speed).toBeCloseTo(1, 12);
    }),
  );
});

/** What two feeds that differ in the last digit only may lose by rounding. */
const lastDigits = 1e-12;

test('a coarser feed lowers the force per area and raises the force, in every material', () => {
  const feeds = fc.double({ min: 0.00005, max: 0.0025, noNaN: true });
  fc.assert(
    fc.property(fc.constantFrom(...cuttingMaterials), feeds, feeds, ({ kc11, mc }, one, other) => {
      const chip = (feed: number) => ({ kc11, mc, depth: 0.001, feed, enteringAngle: Math.PI / 2 });
      const [fine, coarse] = [chip(Math.min(one, other)), chip(Math.max(one, other))];
      const [softer, stronger] = [specificCuttingForce, cuttingForce].map(
        ({ compute }) => compute(coarse) / compute(fine),
      );
      expect(softer).toBeLessThanOrEqual(1 + lastDigits);
      expect(stronger).toBeGreaterThanOrEqual(1 - lastDigits);
    }),
  );
});

test('a tool off centre height has no error where it was set, and no answer beyond the radius', () => {
  expect(toolHeightError.compute({ heightOffset: 0.0003, zeroDiameter: 0.02, diameter: 0.02 })).toBeCloseTo(
    0,
    12,
  );
  expect(toolHeightError.compute({ heightOffset: 0.02, zeroDiameter: 0.02, diameter: 0.01 })).toBeNaN();
});

test('ids of materials are unique', () => {
  expect(new Set(cuttingMaterials.map(({ id }) => id)).size).toBe(cuttingMaterials.length);
});
