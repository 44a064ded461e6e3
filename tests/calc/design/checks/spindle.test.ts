// Worked by hand, no published source: the checks of the spindle at their margins, one after the other.
import { describe, expect, test } from 'vitest';
import { checks } from '../../../../src/calc/subsystems/spindle/checks.ts';
import { type Bench, finder, judges, over, type Row, without } from './bench.ts';

const find = finder(checks);
const motor = (option: string): Bench => ({ answers: { 'spindle-motor': option } });
const onDrive = motor('three-phase-drive');
const single = motor('keep-single-phase');
const knob = motor('keep-speed-knob');

const torques = (slow: number, fast: number): Bench =>
  over(onDrive, {
    figures: { 'spindle-torque-slow': slow, 'spindle-torque-fast': fast, 'cut-torque': 10 },
  });

const room = (margin: number, motorKind = onDrive): Bench =>
  over(motorKind, { measured: { 'motor-shaft-height': 0.09 / margin, 'motor-shaft-room': 0.09 } });

const cut: readonly Row[] = [
  {
    id: 'spindle-cut-power',
    sense: 'at-most',
    comfort: 1.25,
    at: (margin) => ({ figures: { 'cut-power': 750 / margin }, facts: { 'spindle-power': 750 } }),
  },
  {
    id: 'spindle-cut-torque',
    when: 'slow belt',
    sense: 'at-least',
    comfort: 1.25,
    at: (margin) => torques(10 * margin, 1),
    absent: [over(torques(20, 1), single)],
  },
  {
    id: 'spindle-cut-torque',
    when: 'fast belt',
    sense: 'at-least',
    comfort: 1.25,
    at: (margin) => torques(1, 10 * margin),
  },
  ...['three-phase-drive', 'doubler-drive', 'brushless-kit', 'servo-spindle'].map(
    (option): Row => ({
      id: 'spindle-motor-room',
      when: option,
      sense: 'at-most',
      comfort: 1,
      at: (margin) => room(margin, motor(option)),
      absent: [room(2, single), room(2, knob)],
    }),
  ),
];

const top = (margin: number): Bench =>
  over(onDrive, {
    figures: { 'chuck-speed-limit': 30 },
    measured: { 'top-speed-wanted': 30 / margin, 'chuck-marked-speed': 40 },
    facts: { 'spindle-speed-max': 60 },
  });

const gap = (margin: number): Bench =>
  over(onDrive, {
    facts: { 'belt-steps': 2 },
    figures: { 'spindle-top-slow': 10 * margin, 'spindle-lowest-fast': 10 },
  });

const reach = (margin: number): Bench =>
  over(onDrive, { figures: { 'drive-frequency-cap': 100 / margin }, facts: { 'mains-frequency': 50 } });

const endRoom = (margin: number, tube = 'lever-collets', sensor = 'slotted-disc'): Bench => ({
  answers: { 'work-holding': tube, 'spindle-sensor': sensor },
  measured: { 'spindle-end-room': 0.025 * margin },
});

const speed: readonly Row[] = [
  { id: 'chuck-speed', sense: 'at-most', comfort: 1, at: top, absent: [over(top(2), single)] },
  {
    id: 'chuck-speed',
    when: 'the lathe’s own top speed',
    sense: 'at-most',
    comfort: 1,
    at: (margin) =>
      over(without(top(1), 'top-speed-wanted'), { facts: { 'spindle-speed-max': 30 / margin } }),
  },
  {
    id: 'drive-frequency-range',
    sense: 'at-most',
    comfort: 1.25,
    at: reach,
    absent: [over(reach(2), single), over(reach(2), knob)],
  },
  {
    id: 'spindle-speed-gap',
    sense: 'at-least',
    comfort: 1,
    at: gap,
    absent: [
      over(gap(2), knob),
      over(gap(2), { facts: { 'belt-steps': 1 } }),
      over(gap(2), { facts: { 'belt-steps': 1.49 } }),
      without(gap(2), 'belt-steps'),
    ],
  },
  {
    id: 'spindle-speed-gap',
    when: 'one and a half steps',
    sense: 'at-least',
    comfort: 1,
    at: (margin) => over(gap(margin), { facts: { 'belt-steps': 1.5 } }),
  },
  ...(
    [
      ['lever-collets', 'slotted-disc'],
      ['power-chuck', 'encoder-100-200'],
      ['power-chuck', 'encoder-1000-up'],
    ] as const
  ).map(
    ([tube, sensor]): Row => ({
      id: 'bore-end-clearance',
      when: `${tube}, ${sensor}`,
      sense: 'at-least',
      comfort: 1.2,
      at: (margin) => endRoom(margin, tube, sensor),
      absent: [endRoom(2, 'jaw-chuck', sensor), endRoom(2, tube, 'one-mark-a-turn')],
    }),
  ),
];

describe('cut', () => judges(checks, cut));
describe('speed', () => judges(checks, speed));

test('a chuck whose mark was not read is looked at, however fast it may turn', () => {
  const unread = without(top(1), 'chuck-marked-speed');
  const at = (margin: number) =>
    find('chuck-speed', over(unread, { measured: { 'top-speed-wanted': 30 / margin } }));
  expect(at(1)).toMatchObject({ result: 'look', needs: ['chuck-marked-speed'] });
  expect(at(1.04)?.result).toBe('look');
  expect(at(1.06)?.result).toBe('ok');
  expect(find('chuck-speed', top(1))).not.toHaveProperty('needs');
});

test('what has to be measured on the lathe is asked for', () => {
  expect(find('spindle-motor-room', onDrive)?.needs).toEqual(['motor-shaft-height', 'motor-shaft-room']);
  expect(find('spindle-motor-room', without(room(1), 'motor-shaft-height'))).toMatchObject({
    result: 'not-yet',
    needs: ['motor-shaft-height'],
  });
  const open = find('bore-end-clearance', without(endRoom(1), 'spindle-end-room'));
  expect(open).toMatchObject({ result: 'not-yet', needs: ['spindle-end-room'] });
});
