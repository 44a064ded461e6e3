import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  screwBackDrivingTorque,
  screwDriveTorque,
  screwThrust,
} from '../../../src/calc/formulas/screw-drive.ts';
import {
  screwLifeHours,
  screwLifeRevolutions,
  screwMeanForce,
  screwMeanSpeed,
} from '../../../src/calc/formulas/screw-life.ts';
import {
  type EndFixity,
  screwBucklingLoad,
  screwShortLimit,
  screwSpeedLimit,
  screwWhirlSpeed,
} from '../../../src/calc/formulas/screw-limits.ts';
import {
  screwLengthBudget,
  screwStiffness,
  screwThermalGrowth,
} from '../../../src/calc/formulas/screw-shape.ts';
import { slidingScrewEfficiency, slidingScrewTorque } from '../../../src/calc/formulas/sliding-screw.ts';
import { near } from './near.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ends = fc.constantFrom<EndFixity>('fixed-free', 'supported', 'fixed-supported', 'fixed');
const root = between(0.005, 0.05);
const length = between(0.05, 2);

describe('worked by hand, no published source', () => {
  test('whirl and buckling of a 13.2 mm root over 600 mm', () => {
    const screw = { rootDiameter: 0.0132, length: 0.6 };
    near(screwWhirlSpeed.compute({ ...screw, endFixity: 'fixed-supported' }) * 60, 5537);
    near(screwWhirlSpeed.compute({ ...screw, endFixity: 'fixed-free' }) * 60, 1278, 0.011);
    near(screwBucklingLoad.compute({ ...screw, endFixity: 'fixed-supported' }), 8433);
    near(screwBucklingLoad.compute({ ...screw, endFixity: 'fixed-free' }), 1054);
  });
  test('a 12.5 mm root stretches 51 or 202 N for each micrometre', () => {
    const screw = { rootDiameter: 0.0125, length: 0.5 };
    near(screwStiffness.compute({ ...screw, endFixity: 'fixed-supported' }), 50.6e6, 0.001);
    near(screwStiffness.compute({ ...screw, endFixity: 'fixed' }), 202e6, 0.002);
  });
  test('growth, length and the ball speed', () => {
    near(screwThermalGrowth.compute({ length: 0.6, rise: 10 }), 70.2e-6, 0.001);
    const parts = { travel: 0.42, nut: 0.045, runOff: 0.01, covers: 0.03 };
    const journals = { fixedJournal: 0.035, driveStub: 0.025, floatingJournal: 0.015 };
    near(screwLengthBudget.compute({ ...parts, ...journals }), 0.59, 1e-9);
    near(screwSpeedLimit.compute({ ballCircle: 0.01675, dn: 70000 }) * 60 * 16.75, 70000, 1e-9);
  });
  test.each([
    [10.5, 0.364],
    [18, 0.2525],
  ])('trapezoidal screw of %d mm mean diameter, lead 3 mm, friction 0.15', (mm, efficiency) => {
    const screw = { meanDiameter: mm / 1000, lead: 0.003, friction: 0.15, flankAngle: Math.PI / 12 };
    near(
      slidingScrewEfficiency.compute({ ...screw, collarFriction: 0, collarDiameter: 0 }),
      efficiency,
      0.001,
    );
  });
});

describe('laws of the screw', () => {
  test('a longer screw never raises the whirl speed or the buckling load', () => {
    fc.assert(
      fc.property(root, length, length, ends, (rootDiameter, one, other, endFixity) => {
        const [short, long] = one < other ? [one, other] : [other, one];
        for (const formula of [screwWhirlSpeed, screwBucklingLoad, screwStiffness])
          expect(formula.compute({ rootDiameter, length: long, endFixity })).toBeLessThanOrEqual(
            formula.compute({ rootDiameter, length: short, endFixity }),
          );
      }),
    );
  });
  test('holding an end better never makes it worse', () => {
    const order: EndFixity[] = ['fixed-free', 'supported', 'fixed-supported', 'fixed'];
    for (const formula of [screwWhirlSpeed, screwBucklingLoad]) {
      const values = order.map((endFixity) =>
        formula.compute({ rootDiameter: 0.01, length: 0.5, endFixity }),
      );
      expect(values).toEqual([...values].sort((a, b) => a - b));
    }
  });
  test('the steel itself governs a short screw', () => {
    const screw = { rootDiameter: 0.0132, endFixity: 'fixed-supported' } as const;
    expect(screwBucklingLoad.compute({ ...screw, length: 0.2 })).toBeGreaterThan(
      screwShortLimit.compute(screw),
    );
    expect(screwBucklingLoad.compute({ ...screw, length: 0.6 })).toBeLessThan(screwShortLimit.compute(screw));
  });
  test('a finer lead never lowers the push', () => {
    const motor = { torque: 1, efficiency: 0.9, ratio: 2, beltEfficiency: 0.95 };
    fc.assert(
      fc.property(
        between(0.001, 0.02),
        between(0.001, 0.02),
        (one, other) =>
          screwThrust.compute({ ...motor, lead: Math.min(one, other) }) >=
          screwThrust.compute({ ...motor, lead: Math.max(one, other) }),
      ),
    );
  });
  test('push and torque are inverse', () => {
    fc.assert(
      fc.property(between(1, 1e4), between(0.001, 0.02), between(0.1, 1), (force, lead, efficiency) => {
        const torque = screwDriveTorque.compute({ force, lead, efficiency });
        near(screwThrust.compute({ torque, lead, efficiency, ratio: 1, beltEfficiency: 1 }), force, 1e-12);
      }),
    );
  });
  test('driving back never gives more than a screw without loss would', () => {
    const ideal = screwDriveTorque.compute({ force: 1000, lead: 0.005, efficiency: 1 });
    near(
      screwBackDrivingTorque.compute({ force: 1000, lead: 0.005, backEfficiency: 0.9 }),
      0.9 * ideal,
      1e-12,
    );
  });
});

describe('laws of wear and of sliding screws', () => {
  test('half the force lasts eight times as long', () => {
    const life = (meanForce: number) =>
      screwLifeRevolutions.compute({ dynamicRating: 9500, meanForce, loadFactor: 1.2 });
    near(life(200) / life(400), 8, 1e-12);
    const hours = screwLifeHours.compute({ dynamicRating: 9500, meanForce: 400, loadFactor: 1.2, speed: 5 });
    near(hours * 3600 * 5, life(400), 1e-12);
  });
  test('the mean force lies between the least and the greatest', () => {
    const phase = fc.tuple(between(1, 5000), between(0.1, 30), between(0.01, 1));
    fc.assert(
      fc.property(fc.array(phase, { minLength: 1, maxLength: 6 }), (phases) => {
        const [forces, speeds, shares] = [0, 1, 2].map((at) => phases.map((figures) => figures[at]!));
        const mean = screwMeanForce.compute({ forces: forces!, speeds: speeds!, shares: shares! });
        expect(mean).toBeGreaterThanOrEqual(Math.min(...forces!) * (1 - 1e-9));
        expect(mean).toBeLessThanOrEqual(Math.max(...forces!) * (1 + 1e-9));
      }),
    );
  });
  test('below half efficiency the load does not run down by itself, and friction never helps to raise', () => {
    const part = { meanDiameter: between(0.006, 0.03), lead: between(0.001, 0.01) };
    fc.assert(
      fc.property(fc.record({ ...part, friction: between(0.05, 0.25) }), (thread) => {
        const screw = { ...thread, flankAngle: 0, collarFriction: 0, collarDiameter: 0 };
        const lower = slidingScrewTorque.compute({ ...screw, force: 1000, direction: 'lower' });
        if (slidingScrewEfficiency.compute(screw) < 0.5 - 0.5 * thread.friction ** 2)
          expect(lower).toBeGreaterThan(0);
        const rough = { ...screw, friction: thread.friction + 0.01 };
        expect(slidingScrewEfficiency.compute(rough)).toBeLessThan(slidingScrewEfficiency.compute(screw));
      }),
    );
  });
});

test('mean speed of 10 and 20 turns a second, a tenth and three tenths of the time: 17.5, worked by hand', () => {
  near(screwMeanSpeed.compute({ speeds: [10, 20], shares: [0.1, 0.3] }), 17.5, 1e-12);
});
