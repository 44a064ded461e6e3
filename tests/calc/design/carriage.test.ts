// Worked by hand, no published source: carriage of a medium lathe as a whole design, from answers to checks.
import { describe, expect, test } from 'vitest';
import { near } from '../formulas/near.ts';
import { designed } from './axes.ts';

const answers = {
  materials: 'mild-steel',
  'driven-axes': 'both-slides',
  'carriage-drive': 'ball-screw-front',
  'carriage-nut': 'rolled-single-nut',
  'carriage-screw-ends': 'bought-end-blocks',
  'carriage-coupling': 'carriage-belt-2-1',
  holes: 'drill-in-tool-post',
  'axis-motor': 'closed-loop-stepper',
  'motor-size': 'face-57-both',
};
const mm = (value: number) => value / 1000;
const design = designed({ answers });
const { figure } = design;

describe('push', () => {
  test('turning asks 377 N of 2,364', () => {
    near(figure('cutting-force'), 341.5);
    near(figure('carriage-friction'), 104.1);
    near(figure('carriage-push-turning'), 377.4);
    near(figure('carriage-thrust'), 2364);
    near(figure('carriage-thrust') / figure('carriage-push-turning'), 6.26);
  });

  test.each([
    [6, 944, 2.5],
    [8, 1534, 1.54],
    [10, 2265, 1.04],
  ])('a drill of %d mm asks %d N and leaves %d times', (diameter, need, margin) => {
    const drilled = designed({ answers, facts: { 'largest-drill': mm(diameter) } });
    near(drilled.figure('carriage-push-drilling'), need);
    near(drilled.check('drilling-thrust').margin!, margin);
  });

  test('at rest against what the screw stands', () => {
    near(figure('carriage-stall-thrust'), 4727);
    near(figure('carriage-buckling-load'), 11230);
    near(figure('carriage-buckling-load') / figure('carriage-stall-thrust'), 2.37);
  });
});

test('at rapid', () => {
  expect(figure('carriage-motor-speed-rapid') * 60).toBeCloseTo(960, 6);
  expect(figure('carriage-screw-speed-rapid') * 60).toBeCloseTo(480, 6);
  near(figure('carriage-torque-rapid'), 0.473);
  near(figure('carriage-screw-inertia'), 3.03e-5);
  near(figure('carriage-acceleration-torque'), 0.0738);
  near(figure('carriage-acceleration-torque') / figure('carriage-torque-rapid'), 0.156);
  near(figure('carriage-friction-torque'), 0.0485);
  near(design.check('carriage-rapid').margin!, 3.87);
});

test('speeds of the screw', () => {
  near(figure('carriage-whirl-speed') * 60, 6356);
  near(figure('carriage-ball-circle') * 1000 * figure('carriage-screw-speed-rapid') * 60, 8040);
});

test('belt', () => {
  near(figure('carriage-belt-centres'), mm(98.71), 1e-4);
  near(figure('carriage-belt-mesh'), 8.97);
  expect(figure('carriage-ratio')).toBe(2);
});

test('length of the screw for a travel of 380 mm', () => {
  const short = designed({ answers, facts: { 'carriage-travel': 0.38, 'carriage-screw-bought': 0.7 } });
  expect(short.figure('carriage-screw-thread')).toBeCloseTo(0.48, 9);
  expect(short.figure('carriage-screw-length')).toBeCloseTo(0.555, 9);
  expect(short.figure('carriage-screw-cut-off')).toBeCloseTo(0.145, 9);
});
