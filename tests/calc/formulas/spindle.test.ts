import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chuckGripAtSpeed } from '../../../src/calc/formulas/chuck.ts';
import { cuttingForce, cuttingPower, spindleSpeedFor } from '../../../src/calc/formulas/cutting.ts';
import { spindleTorque, torqueFromPower } from '../../../src/calc/formulas/spindle.ts';
import { driveFrequencyCap, driveTorqueAtFrequency } from '../../../src/calc/formulas/spindle-drive.ts';
import {
  stopEnergy,
  stopPowerMean,
  stopPowerPeak,
  stopTorque,
} from '../../../src/calc/formulas/spindle-stop.ts';
import { cuttingTorque } from '../../../src/calc/formulas/tool-forces.ts';

const within = (value: number, expected: number, share = 0.001) =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(share);

describe('a 0.75 kW motor of 1,720 turns a minute at 60 Hz and two belts, worked by hand, no published source', () => {
  const motorSpeed = 1720 / 60;
  const motorTorque = torqueFromPower.compute({ power: 750, speed: motorSpeed });
  const spindle = (ratio: number) => spindleTorque.compute({ motorTorque, ratio, efficiency: 0.93 });
  const hertz = (rpm: number, ratio: number) =>
    driveFrequencyCap.compute({ spindleSpeed: rpm / 60, ratio, motorSpeed, baseFrequency: 60 });

  const force = cuttingForce.compute({
    kc11: 1500e6,
    mc: 0.22,
    depth: 0.0015,
    feed: 0.00015,
    enteringAngle: Math.PI / 2,
  });
  const speed = spindleSpeedFor.compute({ surfaceSpeed: 80 / 60, diameter: 0.06 });

  test('torque at the motor and at the spindle in both belts', () => {
    within(motorTorque, 4.164);
    within(spindle(3), 11.62);
    within(spindle(1.2), 4.647);
  });

  test('the cut asks 683 W and 15.4 N·m, more torque than either belt has', () => {
    const torque = cuttingTorque.compute({ cuttingForce: force, diameter: 0.06 });
    within(speed * 60, 424.4);
    within(force, 512.3);
    within(cuttingPower.compute({ cuttingForce: force, surfaceSpeed: 80 / 60, efficiency: 1 }), 683.1);
    within(torque, 15.37);
    within(spindle(3) / torque, 0.756);
    within(spindle(1.2) / torque, 0.302, 0.002);
    within(spindle(3) / (torque / 1.5), 1.13, 0.01);
  });

  test('in the slow belt the drive runs at 44.4 Hz and has 516 W', () => {
    const frequency = hertz(speed * 60, 3);
    within(frequency, 44.4);
    const turned = driveTorqueAtFrequency.compute({ ratedTorque: spindle(3), baseFrequency: 60, frequency });
    within(turned * 2 * Math.PI * speed, 516.3);
  });

  test('the cap for 2,000 turns a minute belongs to the fast belt; the slow one would let it run to 5,000', () => {
    within(hertz(2000, 1.2), 83.7);
    within(hertz(2000, 3), 209.3);
    within((2000 * hertz(2000, 3)) / hertz(2000, 1.2), 5000);
  });

  test('a stop from 2,000 turns a minute in 3 s', () => {
    const turning = { inertia: 0.028, speed: 2000 / 60 };
    const energy = stopEnergy.compute(turning);
    within(energy, 614.1);
    within(stopPowerMean.compute({ energy, time: 3 }), 204.7);
    within(stopPowerPeak.compute({ energy, time: 3 }), 409.4);
    within(stopTorque.compute({ ...turning, time: 3 }), 1.95, 0.005);
  });
});

test('at twice the plate frequency half of the torque is left; below it all of it', () => {
  const at = (frequency: number) =>
    driveTorqueAtFrequency.compute({ ratedTorque: 5, baseFrequency: 50, frequency });
  expect([0, 10, 50, 100].map(at)).toEqual([5, 5, 5, 2.5]);
});

test('a faster chuck never grips harder', () => {
  const speeds = fc.double({ min: 0, max: 100, noNaN: true });
  fc.assert(
    fc.property(speeds, speeds, (one, other) => {
      const grip = (speed: number) => chuckGripAtSpeed.compute({ gripAtRest: 20000, jawMoments: 0.2, speed });
      expect(grip(Math.max(one, other))).toBeLessThanOrEqual(grip(Math.min(one, other)));
    }),
  );
});
