import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  beltCentreDistance,
  beltLength,
  beltMeshFactor,
  beltTeethInMesh,
  beltToothForce,
} from '../../../src/calc/formulas/belt.ts';
import { near } from './near.ts';

describe('worked by hand, no published source', () => {
  test.each([
    [15, 30, 5, 60, 92.983],
    [20, 20, 5, 60, 100],
    [20, 40, 3, 80, 74.386],
    [20, 40, 5, 70, 98.71],
  ])('%d and %d teeth of %d mm under %d teeth', (teethSmall, teethLarge, pitchMm, beltTeeth, centresMm) => {
    const pulleys = { teethSmall, teethLarge, pitch: pitchMm / 1000 };
    near(beltCentreDistance.compute({ ...pulleys, beltTeeth }) * 1000, centresMm, 6e-5);
  });
  test.each([
    [60, 329.59, 4.45],
    [80, 363.82, 5.28],
    [100, 400.47, 5.75],
  ])(
    '15 and 60 teeth of 5 mm, %d mm apart: short centres, where the usual shortcut errs',
    (mm, lengthMm, mesh) => {
      const drive = { teethSmall: 15, teethLarge: 60, pitch: 0.005, centreDistance: mm / 1000 };
      near(beltLength.compute(drive) * 1000, lengthMm, 2e-5);
      near(beltTeethInMesh.compute(drive), mesh, 1.2e-3);
    },
  );
  test('1 N·m on 20 teeth of 5 mm pulls with 63 N', () => {
    near(beltToothForce.compute({ torque: 1, teeth: 20, pitch: 0.005 }), 62.83, 1e-4);
    near(beltToothForce.compute({ torque: 3, teeth: 20, pitch: 0.005 }), 188.5, 1e-4);
  });
});

describe('laws of the belt', () => {
  test('length and centre distance are inverse', () => {
    const teeth = fc.integer({ min: 12, max: 72 });
    fc.assert(
      fc.property(teeth, teeth, fc.double({ min: 1.02, max: 8, noNaN: true }), (one, other, apart) => {
        const pulleys = { teethSmall: Math.min(one, other), teethLarge: Math.max(one, other), pitch: 0.005 };
        const centreDistance = (apart * (one + other) * 0.005) / (2 * Math.PI);
        const length = beltLength.compute({ ...pulleys, centreDistance });
        near(beltCentreDistance.compute({ ...pulleys, beltTeeth: length / 0.005 }), centreDistance, 1e-9);
      }),
    );
  });
  test('a belt too short for its pulleys has no centre distance', () => {
    const pulleys = { teethSmall: 20, teethLarge: 60, pitch: 0.005 };
    expect(beltCentreDistance.compute({ ...pulleys, beltTeeth: 60 })).toBeNaN();
    expect(beltCentreDistance.compute({ ...pulleys, beltTeeth: 30 })).toBeNaN();
    const equal = { teethSmall: 20, teethLarge: 20, pitch: 0.005 };
    expect(beltCentreDistance.compute({ ...equal, beltTeeth: 30 }), 'they would overlap').toBeNaN();
  });
  test('equal pulleys hold half their teeth', () => {
    const drive = { teethSmall: 24, teethLarge: 24, pitch: 0.003, centreDistance: 0.1 };
    expect(beltTeethInMesh.compute(drive)).toBeCloseTo(12, 12);
  });
  test('nothing is said below four teeth in mesh', () => {
    expect(beltMeshFactor.compute({ teethInMesh: 5.9 })).toBe(0.7);
    expect(beltMeshFactor.compute({ teethInMesh: 3.9 })).toBeNaN();
  });
});
