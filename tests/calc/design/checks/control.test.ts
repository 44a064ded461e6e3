// Worked by hand, no published source: rates, signals and limits of the control at the margins of their checks.
import { expect, test } from 'vitest';
import { checks } from '../../../../src/calc/subsystems/control/checks.ts';
import { type Bench, finder, judges, over, type Row, without } from './bench.ts';

const find = finder(checks);

const counting = (margin: number): Bench => ({
  figures: { 'sensor-lines': 1000, 'encoder-edges': 20_000 / margin, 'control-count-limit': 20_000 },
});
const sending = (margin: number): Bench => ({
  figures: { 'control-pulse-limit': 35_000, 'pulse-rate': 35_000 / margin },
});
const levels = (volts: number): Bench => ({
  measured: { 'drive-input-volts': 5, 'control-output-volts': volts },
});
const clamp = (margin: number, command = 'speed-by-voltage'): Bench => ({
  answers: { 'speed-command': command },
  figures: { 'chuck-speed-limit': 30 },
  measured: { 'program-speed-clamp': 30 / margin },
});

const clamped = (command: string): Row => ({
  id: 'program-speed-clamp',
  when: command,
  sense: 'at-most',
  comfort: 1,
  at: (margin) => clamp(margin, command),
  absent: [
    clamp(2, 'speed-by-knob'),
    over(clamp(2, command), { answers: { control: 'thread-synchroniser' } }),
  ],
});

judges(checks, [
  {
    id: 'encoder-count-rate',
    sense: 'at-most',
    comfort: 2,
    at: counting,
    absent: [without(counting(2), 'sensor-lines'), without(counting(2), 'control-count-limit')],
  },
  {
    id: 'pulse-rate',
    sense: 'at-most',
    comfort: 1 / 0.7,
    at: sending,
    absent: [without(sending(2), 'pulse-rate'), without(sending(2), 'control-pulse-limit')],
  },
  {
    id: 'software-step-timing',
    sense: 'at-least',
    comfort: 1.2,
    at: (margin) => ({ figures: { 'control-beat': 10e-6 * margin } }),
    absent: [{}],
  },
  clamped('speed-by-voltage'),
  clamped('speed-by-serial'),
]);

test.each([
  [3.99, 'stop'],
  [4, 'ok'],
  [5, 'ok'],
  [5.49, 'ok'],
  [5.51, 'stop'],
  [24, 'stop'],
])('a signal of %d V into an input of 5 V: %s', (volts, result) => {
  expect(find('signal-levels', levels(volts))?.result).toBe(result);
  expect(find('signal-levels', levels(volts))).toMatchObject({ sense: 'between', needs: [] });
  expect(find('signal-levels', levels(volts))?.decisions).toContain('drives');
});

test('both voltages, and the clamp, are asked for until they were read', () => {
  expect(find('signal-levels', {})).toMatchObject({
    result: 'not-yet',
    needs: ['control-output-volts', 'drive-input-volts'],
  });
  expect(find('signal-levels', without(levels(5), 'drive-input-volts'))?.needs).toEqual([
    'drive-input-volts',
  ]);
  expect(find('program-speed-clamp', without(clamp(1), 'program-speed-clamp'))).toMatchObject({
    result: 'not-yet',
    needs: ['program-speed-clamp'],
  });
});
