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
  'way-covers': 'wipers-only',
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

test('bellows fold to a sixth of the travel, and the screw is ordered longer by that', () => {
  const thread = (travel: number, cover: string) =>
    designed({ answers: { ...answers, 'way-covers': cover }, facts: { 'carriage-travel': travel } }).figure(
      'carriage-screw-thread',
    );
  expect(thread(0.42, 'bellows') - thread(0.42, 'wipers-only')).toBeCloseTo(0.07 - 0.03, 9);
  expect(thread(0.12, 'bellows')).toBe(thread(0.12, 'wipers-only'));
});

describe('what the checks say of it', () => {
  test('turning is easy; what asks for the larger motor is the drill', () => {
    expect(design.check('carriage-turning').result).toBe('ok');
    const drilled = (diameter: number) =>
      designed({ answers, facts: { 'largest-drill': mm(diameter) } }).check('drilling-thrust').result;
    expect([6, 8, 10, 11].map(drilled)).toEqual(['ok', 'ok', 'look', 'stop']);
  });

  test('the largest drill that keeps the margin lies just over 8 mm, and a pilot buys half as much again', () => {
    const largest = figure('carriage-largest-drill');
    near(largest, mm(8.12), 0.005);
    const drilled = designed({ answers, facts: { 'largest-drill': largest } });
    near(drilled.check('drilling-thrust').margin!, 1.5, 1e-6);
    near(figure('carriage-largest-drill-piloted') / largest, 2 ** (1 / 1.85), 1e-6);
  });

  test('1:1 halves the push and the motor speed', () => {
    const single = designed({ answers: { ...answers, 'carriage-coupling': 'carriage-belt-1-1' } });
    near(single.figure('carriage-thrust') / figure('carriage-thrust'), 0.5, 1e-9);
    near(single.figure('carriage-motor-speed-rapid') * 60, 480, 1e-9);
    expect(single.check('drilling-thrust').result).toBe('stop');
  });

  test.each(['carriage-whirl', 'carriage-buckling', 'carriage-buckling-stall', 'carriage-rapid'])(
    '%s is no worry',
    (id) => {
      expect(design.check(id).result).toBe('ok');
    },
  );

  test('a slow rapid is fine for a stepper, one over 1,000 turns a minute is looked at', () => {
    expect(design.check('carriage-motor-speed').result).toBe('ok');
    const faster = designed({ answers, facts: { 'carriage-rapid': 3 / 60 } });
    near(faster.figure('carriage-motor-speed-rapid') * 60, 1200, 1e-9);
    expect(faster.check('carriage-motor-speed').result).toBe('look');
  });
});

test('a servo of 400 W with 2:1 pushes over 8 kN until its torque is limited', () => {
  const servo = { ...answers, 'axis-motor': 'mains-servo', 'motor-supply': 'mains-direct' };
  const free = designed({ answers: servo });
  near(free.figure('carriage-stall-thrust'), 8190);
  expect(free.check('carriage-torque-limit').result).toBe('stop');
  expect(free.check('carriage-end-bearing').result).toBe('stop');
  const limited = designed({ answers: servo, facts: { 'carriage-torque-limit': 2.2 } });
  expect(limited.check('carriage-torque-limit').result).toBe('ok');
  expect(limited.check('carriage-end-bearing').result).toBe('ok');
});
