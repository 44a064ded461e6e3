// Worked by hand, no published source: cross slide of a medium lathe, 1:1 belt, 12 × 4 ball screw with a free end.
import { expect, test } from 'vitest';
import { lashOnDiameter } from '../../../src/calc/formulas/lash.ts';
import { motorSpeed, stepsPerLength } from '../../../src/calc/formulas/motion.ts';
import { usableTorqueFraction } from '../../../src/calc/formulas/motor.ts';
import { screwDriveTorque, screwThrust } from '../../../src/calc/formulas/screw-drive.ts';
import { screwBucklingLoad, screwWhirlSpeed } from '../../../src/calc/formulas/screw-limits.ts';
import { screwThermalGrowth } from '../../../src/calc/formulas/screw-shape.ts';
import { slideFriction, slideThrust } from '../../../src/calc/formulas/slide.ts';
import { stepperLoadAngle } from '../../../src/calc/formulas/stepper.ts';
import { near } from './near.ts';

const way = { mass: 11, friction: 0.15, gibDrag: 40, wedgeAngle: Math.PI / 2 };
const drive = { lead: 0.004, efficiency: 0.9, ratio: 1, beltEfficiency: 0.95 };
const holding = 2.2;
const screw = { rootDiameter: 0.0096, endFixity: 'fixed-free' } as const;

test('parting asks 469 N of 1,477', () => {
  const need = slideThrust.compute({ ...way, axialForce: 347.9, cuttingForce: 434.9 });
  const available = screwThrust.compute({ ...drive, torque: holding / 2 });
  near(slideFriction.compute({ ...way, cuttingForce: 434.9 }), 121.4);
  near(need, 469.4);
  near(available, 1477);
  near(available / need, 3.15);
});

test('the free end buckles before the motor stalls', () => {
  const buckling = screwBucklingLoad.compute({ ...screw, length: 0.2 });
  near(buckling, 2654);
  near(buckling / screwThrust.compute({ ...drive, torque: holding / 2 }), 1.8);
  near(buckling / screwThrust.compute({ ...drive, torque: holding }), 0.898);
});

test('the free end whips far above its 450 turns a minute', () => {
  near(screwWhirlSpeed.compute({ ...screw, length: 0.23 }) * 60, 6324);
  const speed = motorSpeed.compute({ speed: 1.8 / 60, lead: 0.004, ratio: 1 });
  expect(speed * 60).toBeCloseTo(450, 9);
  near(holding * usableTorqueFraction.compute({ speed }), 0.935);
});

test('lag under load, seen on the diameter, is a tenth of a full step', () => {
  const train = { stepsPerTurn: 200, ratio: 1, lead: 0.004 };
  const fullStep = 1 / stepsPerLength.compute({ ...train, microsteps: 1 });
  const microstep = 1 / stepsPerLength.compute({ ...train, microsteps: 8 });
  expect(lashOnDiameter.compute({ lashes: [fullStep] })).toBeCloseTo(40e-6, 12);
  expect(lashOnDiameter.compute({ lashes: [microstep] })).toBeCloseTo(5e-6, 12);
  const loadTorque = screwDriveTorque.compute({ force: 469.4, lead: 0.004, efficiency: 0.9 }) / 0.95;
  const lag = stepperLoadAngle.compute({ loadTorque, holdingTorque: holding });
  near(loadTorque, 0.349);
  near(lag, 0.102);
  near(lashOnDiameter.compute({ lashes: [lag * fullStep] }), 4.06e-6);
});

test('play and warmth on the diameter', () => {
  expect(lashOnDiameter.compute({ lashes: [30e-6, 10e-6, 5e-6] })).toBeCloseTo(90e-6, 12);
  const growth = screwThermalGrowth.compute({ length: 0.15, rise: 10 });
  near(lashOnDiameter.compute({ lashes: [growth] }), 35.1e-6);
});
