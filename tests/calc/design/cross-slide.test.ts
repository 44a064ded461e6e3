// Worked by hand, no published source: cross slide of a medium lathe as a whole design, free end, 1:1 belt, 12 × 4.
import { describe, expect, test } from 'vitest';
import { near } from '../formulas/near.ts';
import { designed } from './axes.ts';

const answers = {
  materials: 'mild-steel',
  'driven-axes': 'both-slides',
  'cross-screw': 'ball-screw-12',
  'cross-nut': 'cross-single-nut',
  'cross-motor-place': 'front-belt',
  'cross-screw-hold': 'bought-cross-block',
  'axis-motor': 'closed-loop-stepper',
  'motor-size': 'face-57-both',
};
const design = designed({ answers, facts: { 'cut-feed': 0.1e-3 } });
const { figure, check } = design;

test('parting asks 469 N of 1,477, facing 255', () => {
  near(figure('parting-force'), 434.9);
  near(figure('cross-push-parting'), 469.4);
  near(figure('cross-push-facing'), 255.3);
  near(figure('cross-thrust'), 1477);
  near(check('cross-parting').margin!, 3.15);
  expect(check('cross-parting').result).toBe('ok');
});

test('at rapid', () => {
  near(figure('cross-motor-speed-rapid') * 60, 450, 1e-9);
  near(figure('cross-torque-rapid'), 0.935);
  near(figure('cross-whirl-speed') * 60, 6324);
});

test('the screw holds what the motor usually gives; in a crash it is looked at', () => {
  near(figure('cross-buckling-load'), 2654);
  near(check('cross-buckling').margin!, 1.8);
  expect(check('cross-buckling').result).toBe('ok');
  near(figure('cross-buckling-load') / figure('cross-stall-thrust'), 0.898);
  expect(check('cross-buckling-stall').result).toBe('look');
});

describe('on the diameter', () => {
  test('lag under load, whatever the microsteps', () => {
    near(figure('cross-lag-on-diameter'), 4.06e-6);
    expect(check('cross-lag').result).toBe('ok');
  });
  test('a single nut fails; a double nut in a made block does not', () => {
    near(figure('cross-play-on-diameter'), 90e-6);
    expect(check('cross-play').result).toBe('stop');
    const tight = { 'cross-nut': 'cross-double-nut', 'cross-screw-hold': 'made-cross-block' };
    expect(designed({ answers: { ...answers, ...tight } }).check('cross-play').result).toBe('ok');
  });
  test('the play that the owner measured stands before ours', () => {
    const own = designed({ answers, facts: { 'cross-play': 12e-6 } });
    near(own.figure('cross-play-on-diameter'), 24e-6, 1e-9);
    expect(own.check('cross-play').result).toBe('ok');
  });
  test('a front block that warms by 10 kelvin is looked at', () => {
    near(figure('cross-growth-on-diameter'), 35.1e-6);
    expect(check('cross-growth').result).toBe('look');
  });
});

test('belt of 60 teeth on two pulleys of 20: shafts 100 mm apart', () => {
  expect(figure('cross-belt-centres')).toBeCloseTo(0.1, 9);
  expect(figure('cross-belt-mesh')).toBeCloseTo(10, 9);
});

test('the tunnel is judged by the flange of the nut, and only once it is measured', () => {
  expect(check('cross-tunnel')).toMatchObject({ result: 'not-yet', needs: ['tunnel-height'] });
  const low = designed({
    answers,
    facts: { 'tunnel-width': 0.041 },
  });
  expect(low.check('cross-tunnel-width').result).toBe('stop');
  expect(low.check('cross-tunnel-width').needs).toBeUndefined();
});
