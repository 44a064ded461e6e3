// Worked by hand, no published source: carriage of a medium lathe, stepper of 2.2 N·m, 2:1 belt, 16 × 5 ball screw.
import { describe, expect, test } from 'vitest';
import { beltCentreDistance, beltTeethInMesh } from '../../../src/calc/formulas/belt.ts';
import {
  accelerationTorque,
  pulleyInertia,
  reflectedInertia,
  screwInertia,
} from '../../../src/calc/formulas/inertia.ts';
import { motorSpeed, pulseRate, stepsPerLength } from '../../../src/calc/formulas/motion.ts';
import { usableTorqueFraction } from '../../../src/calc/formulas/motor.ts';
import { screwDriveTorque, screwThrust } from '../../../src/calc/formulas/screw-drive.ts';
import { screwBucklingLoad, screwWhirlSpeed } from '../../../src/calc/formulas/screw-limits.ts';
import { screwLengthBudget, screwThreadLength } from '../../../src/calc/formulas/screw-shape.ts';
import { slideFriction, slideThrust } from '../../../src/calc/formulas/slide.ts';
import { stepperSupplyVoltage } from '../../../src/calc/formulas/stepper.ts';
import { near } from './near.ts';

const way = { mass: 30, friction: 0.15, gibDrag: 60, wedgeAngle: Math.PI / 2 };
const drive = { lead: 0.005, efficiency: 0.9, ratio: 2, beltEfficiency: 0.95 };
const train = { stepsPerTurn: 200, microsteps: 8, ratio: 2, lead: 0.005 };
const rapid = 2.4 / 60;
const holding = 2.2;

describe('push at the slide', () => {
  const friction = slideFriction.compute({ ...way, cuttingForce: 0 });
  const available = screwThrust.compute({ ...drive, torque: holding * 0.5 });

  test('friction idle and in the cut', () => {
    near(friction, 104.1);
    near(slideFriction.compute({ ...way, cuttingForce: 341.5 }), 155.4);
  });
  test('turning asks 377 N of 2,364', () => {
    const need = slideThrust.compute({ ...way, axialForce: 222, cuttingForce: 341.5 });
    near(need, 377.4);
    near(available, 2364);
    near(available / need, 6.26);
  });
  test.each([
    [839.8, 2.5],
    [1429.9, 1.54],
    [2160.7, 1.04],
    [2160.7 / 2, 2.0],
  ])('drilling with %d N leaves %d times', (axialForce, margin) => {
    near(available / slideThrust.compute({ ...way, axialForce, cuttingForce: 0 }), margin);
  });
  test('against the buckling of the screw at standstill', () => {
    const stall = screwThrust.compute({ ...drive, torque: holding });
    const buckling = screwBucklingLoad.compute({
      rootDiameter: 0.0132,
      length: 0.52,
      endFixity: 'fixed-supported',
    });
    near(stall, 4727);
    near(buckling, 11230);
    near(buckling / stall, 2.37);
  });
});

describe('at rapid', () => {
  const speed = motorSpeed.compute({ speed: rapid, lead: 0.005, ratio: 2 });
  const torque = holding * usableTorqueFraction.compute({ speed });
  const pulley = (teeth: number) =>
    pulleyInertia.compute({ teeth, pitch: 0.005, width: 0.021, density: 2700 });
  const load = {
    mass: 30,
    lead: 0.005,
    ratio: 2,
    screwInertia: screwInertia.compute({ diameter: 0.016, length: 0.6, density: 7850 }),
  };
  const speedUp = (loadInertia: number) =>
    accelerationTorque.compute({
      rotorInertia: 5.7e-5,
      loadInertia,
      acceleration: 0.3,
      lead: 0.005,
      ratio: 2,
    });
  const withPulleys = speedUp(
    reflectedInertia.compute({ ...load, drivenPulley: pulley(40), motorPulley: pulley(20) }),
  );

  test('steps, pulses and speeds', () => {
    expect(stepsPerLength.compute(train)).toBeCloseTo(640000, 6);
    expect(pulseRate.compute({ ...train, speed: rapid })).toBeCloseTo(25600, 6);
    expect(speed * 60).toBeCloseTo(960, 9);
    near(torque, 0.473);
  });
  test('inertias', () => {
    near(load.screwInertia, 3.03e-5);
    near(pulley(20), 5.71e-6);
    near(pulley(40), 9.14e-5);
    near(30 * (0.005 / (2 * Math.PI)) ** 2, 1.9e-5);
  });
  test('the pulleys ask two fifths more torque to speed up', () => {
    near(withPulleys, 0.0738);
    near(speedUp(reflectedInertia.compute({ ...load, drivenPulley: 0, motorPulley: 0 })), 0.0523);
    near(withPulleys / torque, 0.156);
  });
  test('what is left over friction', () => {
    const friction = screwDriveTorque.compute({ force: 104.1, lead: 0.005, efficiency: 0.9 }) / 2 / 0.95;
    near(friction, 0.0485);
    near(torque / (withPulleys + friction), 3.87);
  });
});

test('the screw whips far above its 480 turns a minute', () => {
  const whirl = { rootDiameter: 0.0132, length: 0.56 };
  near(screwWhirlSpeed.compute({ ...whirl, endFixity: 'fixed-supported' }) * 60, 6356);
  near(screwWhirlSpeed.compute({ ...whirl, endFixity: 'supported' }) * 60, 4074);
});

test('belt of 70 teeth on pulleys of 20 and 40', () => {
  const pulleys = { teethSmall: 20, teethLarge: 40, pitch: 0.005 };
  const centreDistance = beltCentreDistance.compute({ ...pulleys, beltTeeth: 70 });
  expect(centreDistance * 1000).toBeCloseTo(98.71, 2);
  near(beltTeethInMesh.compute({ ...pulleys, centreDistance }), 8.97);
});

test('length of the screw and voltage of the supply', () => {
  const thread = { travel: 0.38, nut: 0.05, runOff: 0.01, covers: 0.03 };
  expect(screwThreadLength.compute(thread)).toBeCloseTo(0.48, 12);
  const journals = { fixedJournal: 0.035, driveStub: 0.025, floatingJournal: 0.015 };
  expect(screwLengthBudget.compute({ ...thread, ...journals })).toBeCloseTo(0.555, 12);
  near(stepperSupplyVoltage.compute({ inductance: 2.5e-3 }), 50.6, 0.015);
});

test('30 and 40 millionths behind a reduction of two, and 10 on the motor: 27.5, worked by hand', () => {
  const inertia = reflectedInertia.compute({
    mass: 40,
    lead: 2 * Math.PI * 1e-3,
    ratio: 2,
    screwInertia: 20e-6,
    drivenPulley: 10e-6,
    motorPulley: 10e-6,
  });
  near(inertia, 27.5e-6, 1e-9);
});
