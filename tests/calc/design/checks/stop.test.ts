// Worked by hand, no published source: stopping the spindle and cutting threads at the margins of their checks.
import { describe, expect, test } from 'vitest';
import { checks } from '../../../../src/calc/subsystems/spindle/checks.ts';
import { type Bench, finder, judges, over, type Row, without } from './bench.ts';

const find = finder(checks);
const both = { reversing: 'forward-and-reverse' };
const ramped: Bench = { answers: { 'spindle-motor': 'three-phase-drive' } };
const single: Bench = { answers: { 'spindle-motor': 'keep-single-phase' } };
const braked = over(ramped, { answers: both });

const intoResistor = (margin: number): Bench =>
  over(braked, { figures: { 'stop-power-peak': 500 / margin }, measured: { 'brake-resistor-watts': 100 } });

const coasting = (margin: number, option: string): Bench => ({
  answers: { 'spindle-motor': option },
  figures: { 'stop-power-mean': 150 / margin },
  facts: { 'spindle-power': 750 },
});

const ohms = (ohm: number): Bench =>
  over(braked, {
    figures: { 'brake-resistor-largest': 200 },
    measured: { 'brake-resistor-ohms': ohm, 'drive-smallest-ohms': 50 },
  });

const nose = (margin: number, option = 'screwed-nose'): Bench =>
  over(ramped, {
    answers: { 'spindle-nose': option },
    figures: { 'nose-torque': 10 / margin, 'spindle-motor-torque': 5, 'belt-ratio-fast': 4 },
  });

const stops: readonly Row[] = [
  { id: 'stop-energy', when: 'into a resistor', sense: 'at-most', comfort: 1.25, at: intoResistor },
  ...['three-phase-drive', 'doubler-drive', 'brushless-kit', 'servo-spindle'].map(
    (option): Row => ({
      id: 'stop-energy',
      when: option,
      sense: 'at-most',
      comfort: 1.25,
      at: (margin) => coasting(margin, option),
      absent: [over(coasting(2, option), single)],
    }),
  ),
  {
    id: 'brake-resistor-ohms',
    when: 'few',
    sense: 'between',
    comfort: 1,
    at: (margin) => ohms(50 * margin),
    absent: [over(ohms(100), single), over(ohms(100), { answers: { reversing: 'forward-only' } })],
  },
  {
    id: 'brake-resistor-ohms',
    when: 'many',
    sense: 'between',
    comfort: 1,
    at: (margin) => ohms(200 / margin),
  },
  ...['screwed-nose', 'nose-not-known'].map(
    (option): Row => ({
      id: 'nose-torque',
      when: option,
      sense: 'at-most',
      comfort: 2,
      at: (margin) => nose(margin, option),
      absent: [nose(2, 'cam-nose'), over(nose(2), single)],
    }),
  ),
];

const threads: Bench = { answers: { purpose: 'thread-cutting' }, figures: { 'sensor-lines': 1000 } };
const byMark = over(threads, { answers: { 'spindle-sensor': 'one-mark-a-turn' } });
const noSensor = { figures: {}, answers: { purpose: 'thread-cutting' } };

const feed = (margin: number): Bench =>
  over(threads, { figures: { 'thread-feed': 0.035 / margin }, facts: { 'carriage-rapid': 0.05 } });
const phase = (margin: number): Bench =>
  over(byMark, { figures: { 'thread-phase-shift': 0.03e-3 / margin } });
const slow = (margin: number): Bench =>
  over(over(threads, ramped), {
    figures: { 'spindle-lowest-slow': 5 / margin },
    facts: { 'thread-spindle-speed': 5 },
  });

const threadRows: readonly Row[] = [
  {
    id: 'thread-feed-speed',
    sense: 'at-most',
    comfort: 1.2,
    at: feed,
    absent: [without(feed(2), 'sensor-lines'), { ...feed(2), answers: {} }],
  },
  {
    id: 'thread-run-out',
    sense: 'at-least',
    comfort: 1.2,
    at: (margin) =>
      over(threads, { figures: { 'thread-run-out': 0.004 }, facts: { 'thread-relief': 0.004 * margin } }),
    absent: [{ figures: { 'thread-run-out': 0.004 }, facts: { 'thread-relief': 0.008 } }],
  },
  {
    id: 'thread-phase-shift',
    sense: 'at-most',
    comfort: 1,
    at: phase,
    absent: [
      over(phase(2), { answers: { 'spindle-sensor': 'encoder-1000-up' } }),
      without(phase(2), 'sensor-lines'),
    ],
  },
  {
    id: 'thread-lead-error',
    when: 'by one mark a turn',
    sense: 'at-most',
    comfort: 1.5,
    at: (margin) =>
      over(byMark, { figures: { 'thread-error-each-turn': 0.03e-3 / margin, 'thread-error-tracked': 1 } }),
    absent: [noSensor],
  },
  {
    id: 'thread-lead-error',
    when: 'by the angle',
    sense: 'at-most',
    comfort: 1.5,
    at: (margin) =>
      over(threads, { figures: { 'thread-error-tracked': 0.03e-3 / margin, 'thread-error-each-turn': 1 } }),
  },
  {
    id: 'spindle-slow-enough',
    sense: 'at-most',
    comfort: 1,
    at: slow,
    absent: [over(slow(2), single), without(slow(2), 'sensor-lines')],
  },
];

describe('stopping', () => judges(checks, stops));
describe('threads', () => judges(checks, threadRows));

test('a lead that follows the mark and one that follows the angle are told apart', () => {
  const labels = [byMark, threads].map((bench) => find('thread-lead-error', bench)?.label);
  expect(new Set(labels).size).toBe(2);
  expect(labels[0]).toMatch(/one mark/);
});

test('watts and ohms of the resistor are asked for until they were read', () => {
  expect(find('stop-energy', braked)).toMatchObject({ result: 'not-yet', needs: ['brake-resistor-watts'] });
  expect(find('brake-resistor-ohms', braked)).toMatchObject({
    result: 'not-yet',
    needs: ['brake-resistor-ohms', 'drive-smallest-ohms'],
  });
  expect(find('brake-resistor-ohms', without(ohms(100), 'drive-smallest-ohms'))?.needs).toEqual([
    'drive-smallest-ohms',
  ]);
});
