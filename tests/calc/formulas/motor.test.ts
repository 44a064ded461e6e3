import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rmsTorque } from '../../../src/calc/formulas/inertia.ts';
import { axisStiffness } from '../../../src/calc/formulas/lash.ts';
import {
  stepperCornerSpeed,
  stepperTorqueAtSpeed,
  usableTorqueFraction,
} from '../../../src/calc/formulas/motor.ts';
import { moveTime, slideFriction } from '../../../src/calc/formulas/slide.ts';
import {
  microstepTorque,
  stepperLoadAngle,
  stepperSupplyCurrent,
  stepperSupplyVoltage,
} from '../../../src/calc/formulas/stepper.ts';
import { near } from './near.ts';

const winding = { holdingTorque: 2.2, ratedCurrent: 4.2, inductance: 3.2e-3, resistance: 0.9, supply: 48 };

describe('worked by hand, no published source', () => {
  test('corner speed without the back voltage: 680 turns a minute', () => {
    near(stepperCornerSpeed.compute({ ...winding, holdingTorque: 0 }) * 60, 680, 0.002);
  });
  test.each([
    [60, 0.5],
    [300, 0.5],
    [450, 0.425],
    [600, 0.35],
    [800, 0.275],
    [960, 0.215],
    [1000, 0.2],
    [2000, 0.1],
  ])('share of the holding torque at %d turns a minute', (perMinute, share) => {
    near(usableTorqueFraction.compute({ speed: perMinute / 60 }), share, 1e-9);
  });
  test('supply of two motors of 4.2 A, and of 3.2 and 6 mH', () => {
    near(stepperSupplyCurrent.compute({ phaseCurrents: [4.2, 4.2] }), 5.63, 0.001);
    near(stepperSupplyVoltage.compute({ inductance: 3.2e-3 }), 56.6, 0.001);
    near(stepperSupplyVoltage.compute({ inductance: 6e-3 }), 77.46, 0.0001);
  });
  test('a short move never reaches its speed', () => {
    near(moveTime.compute({ distance: 0.01, speed: 0.25, acceleration: 2.5 }), 0.12649, 1e-4);
    near(moveTime.compute({ distance: 0.025, speed: 0.25, acceleration: 2.5 }), 0.2, 1e-9);
  });
});

describe('a winding of round figures: 3 V over the resistance, 1 V and 3 V for each rad/s, worked by hand', () => {
  const round = { holdingTorque: 2 * Math.SQRT2, ratedCurrent: 2, resistance: 1.5, inductance: 0.03 };
  const corner = 1 / (2 * Math.PI);
  const torque = (speed: number) => stepperTorqueAtSpeed.compute({ ...round, supply: 5, speed });
  const full = 0.7 * 2 * Math.SQRT2;

  test('5 V drive the current up to 1 rad/s: 5² = (3 + 1)² + 3²', () => {
    near(stepperCornerSpeed.compute({ ...round, supply: 5 }), corner, 1e-12);
  });
  test('seven tenths of the holding torque up to there, half of that at twice the speed', () => {
    near(torque(0.5 * corner), full, 1e-12);
    near(torque(corner), full, 1e-9);
    near(torque(2 * corner), full / 2, 1e-9);
  });
  test('a supply that only just covers the resistance, or not even that, has no corner', () => {
    const corners = [3, 2.9].map((supply) =>
      stepperCornerSpeed.compute({ ...round, inductance: 1e-6, supply }),
    );
    expect(corners).toEqual([Number.NaN, Number.NaN]);
  });
});

describe('laws of the motor', () => {
  const speed = fc.double({ min: 0.1, max: 60, noNaN: true });
  test('more speed never gives more torque, by model or by rule', () => {
    fc.assert(
      fc.property(speed, speed, (one, other) => {
        const [slow, fast] = [Math.min(one, other), Math.max(one, other)];
        const torque = (at: number) => stepperTorqueAtSpeed.compute({ ...winding, speed: at });
        expect(torque(fast)).toBeLessThanOrEqual(torque(slow));
        const share = (at: number) => usableTorqueFraction.compute({ speed: at });
        expect(share(fast)).toBeLessThanOrEqual(share(slow) + 1e-12);
      }),
    );
  });
  test('more voltage never lowers the corner, and too little gives no answer', () => {
    const corner = (supply: number) => stepperCornerSpeed.compute({ ...winding, supply });
    expect(corner(60)).toBeGreaterThan(corner(36));
    expect(corner(3)).toBeNaN();
    expect(stepperTorqueAtSpeed.compute({ ...winding, supply: 3, speed: 1 })).toBeNaN();
  });
  test('lag and microstep torque are inverse; an overloaded motor slips', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 256 }), (microsteps) => {
        const loadTorque = microstepTorque.compute({ holdingTorque: 2.2, microsteps });
        near(stepperLoadAngle.compute({ loadTorque, holdingTorque: 2.2 }), 1 / microsteps, 1e-7);
      }),
    );
    expect(stepperLoadAngle.compute({ loadTorque: 3, holdingTorque: 2.2 })).toBeNaN();
  });
  test('a steady torque is its own mean, and a rest lowers it', () => {
    near(rmsTorque.compute({ torques: [0.7, 0.7], times: [1, 3] }), 0.7, 1e-12);
    near(rmsTorque.compute({ torques: [0.7, 0], times: [1, 3] }), 0.35, 1e-12);
  });
});

describe('laws of the slide', () => {
  test('a dovetail rubs more than a flat way', () => {
    const way = { mass: 11, friction: 0.15, cuttingForce: 300, gibDrag: 0 };
    const flat = slideFriction.compute({ ...way, wedgeAngle: Math.PI / 2 });
    near(slideFriction.compute({ ...way, wedgeAngle: Math.PI / 3 }) / flat, 2 / Math.sqrt(3), 1e-12);
  });
  test('springs of 100 and 25 N/µm in a row give 20, worked by hand', () => {
    near(axisStiffness.compute({ stiffnesses: [100e6, 25e6] }), 20e6, 1e-12);
    near(axisStiffness.compute({ stiffnesses: [30e6] }), 30e6, 1e-12);
  });
  test('an axis is softer than its softest part', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1e6, max: 1e9, noNaN: true }), { minLength: 1, maxLength: 5 }),
        (parts) => axisStiffness.compute({ stiffnesses: parts }) <= Math.min(...parts) * (1 + 1e-12),
      ),
    );
  });
  test('more speed never makes a move longer', () => {
    const one = fc.double({ min: 0.005, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(one, one, one, (distance, first, second) => {
        const time = (v: number) => moveTime.compute({ distance, speed: v, acceleration: 0.3 });
        expect(time(Math.max(first, second))).toBeLessThanOrEqual(
          time(Math.min(first, second)) * (1 + 1e-12),
        );
      }),
    );
  });
});
