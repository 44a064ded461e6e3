// Worked by hand, no published source: original lead screw, 8 to the inch, turned by a stepper through 1:1.
import { expect, test } from 'vitest';
import { motorSpeed, softwareStepLimit, stepsPerLength } from '../../../src/calc/formulas/motion.ts';
import { usableTorqueFraction } from '../../../src/calc/formulas/motor.ts';
import { screwDriveTorque } from '../../../src/calc/formulas/screw-drive.ts';
import { slideThrust } from '../../../src/calc/formulas/slide.ts';
import {
  screwLeadAngle,
  slidingScrewEfficiency,
  slidingScrewTorque,
} from '../../../src/calc/formulas/sliding-screw.ts';
import { near } from './near.ts';

const lead = 0.0254 / 8;
const screw = {
  meanDiameter: 0.0174625,
  lead,
  friction: 0.15,
  flankAngle: (14.5 * Math.PI) / 180,
  collarFriction: 0,
  collarDiameter: 0,
};
const force = slideThrust.compute({
  axialForce: 250,
  mass: 18,
  friction: 0.15,
  cuttingForce: 0,
  gibDrag: 80,
  wedgeAngle: Math.PI / 2,
});

test('slope and efficiency of the thread', () => {
  near((screwLeadAngle.compute(screw) * 180) / Math.PI, 3.312, 0.001);
  near(slidingScrewEfficiency.compute(screw), 0.2695, 0.001);
});

test('torque and what is left', () => {
  const torque = slidingScrewTorque.compute({ ...screw, force, direction: 'raise' });
  near(force, 356.5);
  near(torque, 0.668);
  const speed = motorSpeed.compute({ speed: (1.5e-3 * 300) / 60, lead, ratio: 1 });
  near(speed * 60, 141.7);
  near((2.2 * usableTorqueFraction.compute({ speed })) / torque, 1.65);
});

test('the efficiency of a ball screw would make it look more than three times as easy', () => {
  near(1.1 / screwDriveTorque.compute({ force, lead, efficiency: 0.9 }), 5.5);
});

test('steps for the length, and the most a program can time', () => {
  near(stepsPerLength.compute({ stepsPerTurn: 200, microsteps: 8, ratio: 1, lead }), 503937, 1e-6);
  expect(softwareStepLimit.compute({ basePeriod: 25e-6 })).toBeCloseTo(20000, 6);
});
