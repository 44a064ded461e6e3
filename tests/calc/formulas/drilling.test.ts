import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type DrillMaterial,
  type DrillPoint,
  drillMaterials,
} from '../../../src/calc/formulas/drill-materials.ts';
import { drillLargest, drillThrust, drillTorque } from '../../../src/calc/formulas/drilling.ts';
import { drillThrustCarbide, drillTorqueCarbide } from '../../../src/calc/formulas/drilling-carbide.ts';
import { drillThrustHandbook, drillTorqueHandbook } from '../../../src/calc/formulas/drilling-handbook.ts';

const thrustOf = (millimetre: number, material: DrillMaterial, point: DrillPoint = 'sharp') =>
  drillThrust.compute({ diameter: millimetre / 1000, feed: millimetre / 80 / 1000, material, point });

describe('worked by hand, no published source', () => {
  test.each([
    [6, 839.8],
    [8, 1429.9],
    [10, 2160.7],
  ])('mild steel, %d mm, sharp: %d N', (millimetre, newton) => {
    expect(thrustOf(millimetre, 'mild-steel')).toBeCloseTo(newton, 0);
  });

  test.each<[DrillMaterial, number, number]>([
    ['mild-steel', 1514, 2.52],
    ['chrome-molybdenum-steel', 1643, 2.74],
    ['aluminium', 689, 1.15],
  ])('%s, 6 mm at 0.15 mm a turn', (material, newton, torque) => {
    const drill = { diameter: 0.006, feed: 0.00015, material };
    expect(Math.abs(drillThrust.compute({ ...drill, point: 'sharp' }) - newton)).toBeLessThan(1);
    expect(drillTorque.compute(drill)).toBeCloseTo(torque, 2);
  });

  test.each([
    [6, 1676, 3.59],
    [8, 2204, 6.03],
    [10, 2753, 9],
    [12, 3328, 12.5],
  ])('handbook, steel of 200 HB, %d mm at 0.15 mm a turn', (millimetre, newton, torque) => {
    const drill = {
      diameter: millimetre / 1000,
      feed: 0.00015,
      workFactor: 24000,
      web: 'ordinary',
      wear: 1,
    } as const;
    expect(Math.abs(drillThrustHandbook.compute(drill) / newton - 1)).toBeLessThan(0.001);
    expect(Math.abs(drillTorqueHandbook.compute(drill) / torque - 1)).toBeLessThan(0.002);
  });

  test('the point of a 10 mm drill: split, sharp, worn out, piloted', () => {
    const points: DrillPoint[] = ['split', 'sharp', 'worn-out', 'piloted'];
    const shares = points.map((point) => thrustOf(10, 'mild-steel', point) / thrustOf(10, 'mild-steel'));
    expect(shares.map((share) => Number(share.toFixed(6)))).toEqual([0.7, 1, 1.5, 0.5]);
  });
});

describe('the carbide method', () => {
  const drill = { diameter: 0.01, feed: 0.00015, specificForce: 2100e6, edgeAngle: Math.PI / 2 };

  test.each(['solid-carbide', 'indexable'] as const)('%s at an edge of 30°, worked by hand', (kind) => {
    const steep = { ...drill, edgeAngle: Math.PI / 6, drill: kind };
    expect(drillThrustCarbide.compute(steep)).toBeCloseTo(496.125, 6);
    expect(drillTorqueCarbide.compute(steep)).toBeCloseTo(1.96875, 9);
  });

  test('refuses an ordinary drill', () => {
    expect(drillThrustCarbide.compute({ ...drill, drill: 'twist' })).toBeNaN();
    expect(drillTorqueCarbide.compute({ ...drill, drill: 'twist' })).toBeNaN();
  });

  test('reads 40 to 65 % under the twist-drill methods for the same hole', () => {
    const low = drillThrustCarbide.compute({ ...drill, drill: 'solid-carbide' });
    const twist = drillThrust.compute({ ...drill, material: 'mild-steel', point: 'sharp' });
    expect(low / twist).toBeGreaterThan(0.35);
    expect(low / twist).toBeLessThan(0.6);
  });
});

const material = fc.constantFrom(...(Object.keys(drillMaterials) as DrillMaterial[]));
const point = fc.constantFrom<DrillPoint[]>('sharp', 'split', 'piloted', 'worn', 'worn-out');
const millimetre = fc.double({ min: 1, max: 25, noNaN: true });

test('the largest drill for a thrust needs exactly that thrust', () => {
  fc.assert(
    fc.property(material, point, fc.double({ min: 50, max: 10000, noNaN: true }), (of, ground, thrust) => {
      const diameter = drillLargest.compute({ thrust, feedShare: 1 / 80, material: of, point: ground });
      const back = drillThrust.compute({ diameter, feed: diameter / 80, material: of, point: ground });
      expect(back / thrust).toBeCloseTo(1, 9);
    }),
  );
});

test('a thicker drill never needs less thrust or torque', () => {
  fc.assert(
    fc.property(material, millimetre, millimetre, (of, one, other) => {
      const [thin, thick] = [Math.min(one, other), Math.max(one, other)];
      expect(thrustOf(thick, of)).toBeGreaterThanOrEqual(thrustOf(thin, of));
      const torque = (size: number) =>
        drillTorque.compute({ diameter: size / 1000, feed: 0.0001, material: of });
      expect(torque(thick)).toBeGreaterThanOrEqual(torque(thin));
    }),
  );
});

test('an unknown case has no answer', () => {
  const odd = 'cheese' as DrillMaterial;
  expect(drillThrust.compute({ diameter: 0.01, feed: 0.0001, material: odd, point: 'sharp' })).toBeNaN();
  expect(drillTorque.compute({ diameter: 0.01, feed: 0.0001, material: odd })).toBeNaN();
});
