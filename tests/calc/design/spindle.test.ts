// Worked by hand, no published source: 0.75 kW, four poles, 60 Hz, 1,720 turns a minute, two belts of 3.0 and 1.2.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { near } from '../formulas/near.ts';
import { checkOf, designWith, figureOf } from './plans.ts';

const rpm = (value: number): number => value / 60;
const facts = {
  'spindle-power': 750,
  'mains-frequency': 60,
  'spindle-motor-speed': rpm(1720),
  'belt-ratio-slow': 3,
  'belt-ratio-fast': 1.2,
  'belt-steps': 2,
  'spindle-speed-max': rpm(2000),
  'chuck-marked-speed': rpm(2000),
  'cut-depth': 0.0015,
  'cut-feed': 0.00015,
  'cut-diameter': 0.06,
  'surface-speed': 80 / 60,
  'chuck-diameter': 0.16,
  'chuck-mass': 7,
};
const answers = {
  'spindle-motor': ['three-phase-drive'],
  materials: ['mild-steel'],
  'spindle-nose': ['bolted-nose'],
  reversing: ['forward-and-reverse'],
  'mains-supply': ['volts-230'],
};
const design = (changed: Record<string, number> = {}) =>
  designWith('medium', { ...facts, ...changed }, answers);

describe('a heavy cut on a 0.75 kW spindle', () => {
  const look = design();

  test.each([
    ['spindle-motor-torque', 4.164],
    ['spindle-torque-slow', 11.62],
    ['spindle-torque-fast', 4.647],
    ['cut-speed', rpm(424.4)],
    ['cut-force', 512.3],
    ['cut-power', 683.1],
    ['cut-torque', 15.37],
    ['cut-frequency-slow', 44.4],
    ['spindle-power-slow', 516.3],
    ['drive-frequency-fast', 83.7],
    ['drive-frequency-slow', 209.3],
    ['drive-frequency-cap', 80],
    ['overspeed-by-slow-limit', rpm(5000)],
    ['spindle-inertia', 0.028],
    ['stop-energy', 614.1],
    ['stop-power-mean', 204.7],
    ['stop-power-peak', 409.4],
    ['nose-torque', 1.95],
  ])('%s is %d', (figure, byHand) => near(figureOf(look, figure), byHand));

  test('it stalls in both belts although the plate has the power', () => {
    const torque = checkOf(look, 'spindle-cut-torque');
    expect(torque.result).toBe('stop');
    near(torque.margin!, 0.756);
    near(figureOf(look, 'spindle-torque-fast') / figureOf(look, 'cut-torque'), 0.302);
    const power = checkOf(look, 'spindle-cut-power');
    expect(power.result).toBe('look');
    near(1 / power.margin!, 0.91);
  });

  test('two thirds of the depth goes in the slow belt, with little in hand', () => {
    const torque = checkOf(design({ 'cut-depth': 0.001 }), 'spindle-cut-torque');
    expect(torque.result).toBe('look');
    near(torque.margin!, 1.13);
  });

  test('the frequency limit lies inside what the motor takes', () => {
    expect(checkOf(look, 'drive-frequency-range').result).toBe('ok');
    expect(checkOf(look, 'chuck-speed').result).toBe('ok');
  });
});

describe('limits of speed', () => {
  test('a chuck marked under the top speed stops the plan until the limit follows', () => {
    expect(checkOf(design({ 'chuck-marked-speed': rpm(1500) }), 'chuck-speed').result).toBe('stop');
    const lower = { 'chuck-marked-speed': rpm(1500), 'top-speed-wanted': rpm(1500) };
    expect(checkOf(design(lower), 'chuck-speed').result).toBe('ok');
  });

  test('a chuck marked higher never lifts the limit above the lathe’s own top speed', () => {
    near(figureOf(design({ 'chuck-marked-speed': rpm(4000) }), 'chuck-speed-limit'), rpm(2000), 1e-9);
    const wanted = { 'chuck-marked-speed': rpm(4000), 'top-speed-wanted': rpm(2400) };
    expect(checkOf(design(wanted), 'chuck-speed').result).toBe('stop');
  });

  test('work that stands less sets the limit', () => {
    near(figureOf(design({ 'work-safe-speed': rpm(900) }), 'chuck-speed-limit'), rpm(900), 1e-9);
  });

  test('an unmarked chuck is said to be unread', () => {
    const { 'chuck-marked-speed': _, ...unmarked } = facts;
    const check = checkOf(designWith('medium', unmarked, answers), 'chuck-speed');
    expect([check.result, check.needs]).toEqual(['look', ['chuck-marked-speed']]);
  });
});

describe('other motors', () => {
  const motorised = (motor: string) => designWith('medium', {}, { 'spindle-motor': [motor] });

  test('a single-phase motor has no drive to set, and its power is still judged', () => {
    const look = motorised('keep-single-phase');
    for (const figure of ['drive-frequency-cap', 'stop-time', 'spindle-torque-slow'])
      expect(look.figure(figure)).toBeUndefined();
    expect(checkOf(look, 'spindle-cut-power').result).toBe('ok');
  });

  test('a motor with its own electronics is not run above its plate', () => {
    const look = motorised('servo-spindle');
    near(figureOf(look, 'spindle-top-fast'), 2000 / 60, 1e-9);
    expect(look.figure('cut-frequency-slow')).toBeUndefined();
  });

  test('one belt position: slow and fast are the same', () => {
    const look = designWith('medium', { 'belt-steps': 1 }, { 'spindle-motor': ['three-phase-drive'] });
    expect(figureOf(look, 'belt-ratio-slow')).toBe(figureOf(look, 'belt-ratio-fast'));
  });

  test('the worst of the metals counts', () => {
    const cut = (...materials: string[]) => figureOf(designWith('medium', {}, { materials }), 'cut-force');
    expect(cut('brass', 'alloy-steel')).toBe(cut('alloy-steel'));
    expect(cut('brass')).toBeLessThan(cut('mild-steel'));
  });
});

test('draw tube and sensor at one end of the spindle: the room is measured', () => {
  const both = { 'work-holding': ['lever-collets'], 'spindle-sensor': ['encoder-1000-up'] };
  const room = (facts: Record<string, number>) =>
    checkOf(designWith('medium', facts, both), 'bore-end-clearance').result;
  expect([room({}), room({ 'spindle-end-room': 0.02 }), room({ 'spindle-end-room': 0.04 })]).toEqual([
    'not-yet',
    'stop',
    'ok',
  ]);
});

describe('stopping', () => {
  test('a resistor is judged by the start of the stop, and by its ohms against the drive', () => {
    expect(checkOf(design(), 'stop-energy').result).toBe('not-yet');
    expect(checkOf(design(), 'stop-energy').needs).toEqual(['brake-resistor-watts']);
    expect(checkOf(design({ 'brake-resistor-watts': 50 }), 'stop-energy').result).toBe('stop');
    expect(checkOf(design({ 'brake-resistor-watts': 150 }), 'stop-energy').result).toBe('ok');
    const ohms = { 'brake-resistor-ohms': 60, 'drive-smallest-ohms': 100 };
    expect(checkOf(design(ohms), 'brake-resistor-ohms').result).toBe('stop');
    expect(checkOf(design({ ...ohms, 'brake-resistor-ohms': 120 }), 'brake-resistor-ohms').result).toBe('ok');
  });

  test('a screwed nose without a lock stops in 5 s and loads its thread less', () => {
    const screwed = { ...answers, 'spindle-nose': ['screwed-nose'], reversing: ['forward-only'] };
    const look = designWith('medium', facts, screwed);
    expect(figureOf(look, 'stop-time')).toBe(5);
    expect(figureOf(look, 'nose-torque')).toBeLessThan(figureOf(design(), 'nose-torque'));
    expect(checkOf(look, 'nose-torque').testWhen).toBeDefined();
  });
});

test('more power never lowers the margin of the torque, a deeper cut never raises it', () => {
  const share = fc.double({ min: 0.2, max: 3, noNaN: true });
  const margin = (power: number, depth: number): number =>
    checkOf(design({ 'spindle-power': power, 'cut-depth': depth }), 'spindle-cut-torque').margin!;
  fc.assert(
    fc.property(share, share, (one, other) => {
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      expect(margin(750 * high, 0.001)).toBeGreaterThanOrEqual(margin(750 * low, 0.001));
      expect(margin(750, 0.001 * high)).toBeLessThanOrEqual(margin(750, 0.001 * low) * (1 + 1e-12));
    }),
    { numRuns: 60 },
  );
});

test('the frequency limit of the fast belt never lets the unloaded spindle pass the chuck', () => {
  const marked = fc.double({ min: 500, max: 4000, noNaN: true });
  fc.assert(
    fc.property(marked, fc.double({ min: 0.5, max: 3, noNaN: true }), (mark, ratio) => {
      const look = design({ 'chuck-marked-speed': rpm(mark), 'belt-ratio-fast': ratio });
      const unloaded = (figureOf(look, 'drive-frequency-cap') / 60) * rpm(1800);
      expect(unloaded / ratio).toBeLessThanOrEqual(figureOf(look, 'chuck-speed-limit') * (1 + 1e-9));
    }),
    { numRuns: 60 },
  );
});
