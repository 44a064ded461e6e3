// Worked by hand, no published source: a thread synchroniser on the original lead screw, 8 to the inch.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { infeedList } from '../../../src/calc/subsystems/spindle/design-thread.ts';
import { near } from '../formulas/near.ts';
import { checkOf, designWith, figureOf } from './plans.ts';

const rpm = (value: number): number => value / 60;
const facts = {
  'lead-screw-lead': 0.0254 / 8,
  'encoder-lines': 600,
  'coarsest-thread': 0.0015,
  'thread-spindle-speed': rpm(300),
  'thread-length': 0.03,
  'slide-acceleration': 0.1,
  'spindle-speed-max': rpm(2500),
};
const answers = {
  purpose: ['thread-cutting'],
  'driven-axes': ['carriage-only'],
  control: ['thread-synchroniser'],
  'carriage-drive': ['original-lead-screw'],
  'carriage-coupling': ['carriage-direct'],
  'axis-motor': ['closed-loop-stepper'],
  'spindle-sensor': ['encoder-1000-up'],
  'spindle-motor': ['keep-speed-knob'],
};
const design = (changed: Record<string, number> = {}, other: Record<string, string[]> = {}) =>
  designWith('small', { ...facts, ...changed }, { ...answers, ...other });

describe('a thread synchroniser on a lead screw of 8 to the inch', () => {
  const look = design();

  test.each([
    ['thread-ratio-steps', 96000],
    ['thread-ratio-turns', 127],
    ['thread-rounding-error', 3.75e-6],
    ['encoder-edges-threading', 12000],
    ['encoder-edges', 100000],
    ['thread-feed', 0.0075],
    ['thread-run-up-ramp', 0.281e-3],
    ['thread-run-up', 3.28e-3],
    ['thread-run-out', 1.781e-3],
  ])('%s is %d', (figure, byHand) => near(figureOf(look, figure), byHand));

  test('20 to the inch is exact, 3 mm doubles the pulses', () => {
    const inch = design({ 'coarsest-thread': 0.0254 / 20 });
    expect([figureOf(inch, 'thread-ratio-steps'), figureOf(inch, 'thread-ratio-turns')]).toEqual([640, 1]);
    expect(figureOf(inch, 'thread-rounding-error')).toBe(0);
    expect(figureOf(design({ 'coarsest-thread': 0.003 }), 'thread-ratio-steps')).toBe(192000);
  });

  test('the box counts 600 lines at top speed', () => {
    expect(checkOf(look, 'encoder-count-rate').result).toBe('ok');
    expect(checkOf(design({ 'control-count-limit': 150e3 }), 'encoder-count-rate').result).toBe('look');
    expect(checkOf(design({ 'control-count-limit': 90e3 }), 'encoder-count-rate').result).toBe('stop');
  });
});

describe('lead and place of a thread', () => {
  const mark = { 'spindle-sensor': ['one-mark-a-turn'], control: ['motion-card-pc'] };

  test('one mark a turn with a motor that sags by a tenth: a ninth of the pitch in every turn', () => {
    const look = design({}, mark);
    near(figureOf(look, 'thread-error-each-turn'), 0.0015 * (1 / 0.9 - 1));
    near(figureOf(look, 'thread-error-whole'), 0.03 * (1 / 0.9 - 1));
    expect(checkOf(look, 'thread-lead-error').result).toBe('stop');
  });

  test('following the angle, the error is one count, whatever the motor does', () => {
    const look = design();
    near(figureOf(look, 'thread-error-tracked'), 0.0015 / 2400);
    expect(checkOf(look, 'thread-lead-error').result).toBe('ok');
  });

  test('420 turns after 400 shift the start by 0.026 mm, and only where a mark is followed', () => {
    const changed = { 'thread-spindle-speed': rpm(400), 'slide-acceleration': 0.2 };
    const look = design(changed, mark);
    near(figureOf(look, 'thread-phase-shift'), 0.0256e-3);
    expect(checkOf(look, 'thread-phase-shift').result).toBe('ok');
    expect(design(changed).figure('thread-phase-shift')).toBeUndefined();
  });

  test('too coarse a thread for the carriage is stopped, a slower spindle cures it', () => {
    const coarse = { 'coarsest-thread': 0.006, 'carriage-rapid': 0.03, 'thread-relief': 0.03 };
    expect(checkOf(design(coarse), 'thread-feed-speed').result).toBe('stop');
    expect(checkOf(design({ ...coarse, 'thread-spindle-speed': 2 }), 'thread-feed-speed').result).toBe('ok');
  });
});

test('the passes of a thread add up to its depth, the first no heavier than a third of it', () => {
  const look = design();
  const list = infeedList(look).map(({ value }) => value);
  expect(list).toHaveLength(8);
  near(
    list.reduce((sum, each) => sum + each, 0),
    figureOf(look, 'thread-depth'),
    1e-9,
  );
  near(list[0]!, (0.9202e-3 / Math.sqrt(7)) * Math.sqrt(0.3));
  expect(figureOf(look, 'thread-first-infeed')).toBe(list[0]);
  expect(figureOf(look, 'thread-last-infeed')).toBe(list.at(-1));
});

test('more acceleration never asks for more room, a faster spindle never for less', () => {
  const figures = fc.double({ min: 0.05, max: 2, noNaN: true });
  const room = (acceleration: number, speed: number): number =>
    figureOf(
      design({ 'slide-acceleration': acceleration, 'thread-spindle-speed': speed * 5 }),
      'thread-run-up',
    );
  fc.assert(
    fc.property(figures, figures, (one, other) => {
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      expect(room(high, 1)).toBeLessThanOrEqual(room(low, 1));
      expect(room(0.3, high)).toBeGreaterThanOrEqual(room(0.3, low));
    }),
    { numRuns: 60 },
  );
});
