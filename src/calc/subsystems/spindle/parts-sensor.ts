import { all, always, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { lineEncoder, singleEnded } from './drive.ts';

const base = { subsystem: 'spindle', unit: 'each', combine: 'most' } as const;
const once = (when: Part['needs'][number]['when'], why: string): Part['needs'] => [{ when, qty: 1, why }];
/** A servo counts its own shaft, so nothing more is bought for it. */
const ownEncoder = is('sensor-place', 'on-motor-shaft');
const besideSpindle = all(lineEncoder, not(ownEncoder));

export const sensorParts: readonly Part[] = [
  {
    ...base,
    id: 'index-sensor',
    name: 'Sensor and target for one mark a turn',
    note: 'Magnetic or slotted light sensor.',
    spares: 'One spare sensor.',
    keep: [{ when: always, qty: 1, why: 'a chip or a wrong wire ends it, and threads wait for it' }],
    needs: [
      { when: is('spindle-sensor', 'one-mark-a-turn'), qty: 1, why: 'marks the start of a thread' },
      { when: ownEncoder, qty: 1, why: 'one mark on the spindle itself, which the motor cannot give' },
    ],
  },
  {
    ...base,
    id: 'slotted-disc-set',
    unit: 'set',
    name: 'Stock and light sensors for a slotted disc',
    note: 'Two or three sensors, and a cover against chips and light.',
    spares: 'Two spare sensors.',
    needs: once(is('spindle-sensor', 'slotted-disc'), 'counts the angle of the spindle'),
  },
  {
    ...base,
    id: 'encoder-low-lines',
    name: 'Encoder, 100 to 200 lines and a mark',
    note: 'Plain signals.',
    inspect: 'Counts a turn, supply voltage.',
    needs: once(
      all(is('spindle-sensor', 'encoder-100-200'), not(ownEncoder)),
      'counts the angle of the spindle',
    ),
  },
  {
    ...base,
    id: 'encoder-line-driver',
    name: 'Encoder, 1,000 to 2,048 lines and a mark',
    note: 'Signal pairs (line driver) against noise.',
    inspect: 'Counts a turn, supply voltage, pairs or single wires.',
    needs: once(
      all(is('spindle-sensor', 'encoder-1000-up'), not(ownEncoder)),
      'counts the angle of the spindle',
    ),
  },
  {
    ...base,
    id: 'encoder-belt',
    unit: 'set',
    name: 'Toothed belt and two equal pulleys for the sensor',
    note: 'The spindle-side pulley has a bore of 30 to 45 mm.',
    spares: 'A spare belt.',
    needs: once(all(lineEncoder, is('sensor-place', 'spindle-belt')), 'turns the sensor one to one'),
  },
  {
    ...base,
    id: 'stud-adapter',
    name: 'Adapter to the change-gear stud',
    note: 'A hub turned on your lathe.',
    needs: once(
      all(lineEncoder, is('sensor-place', 'stud-gear')),
      'turns the sensor from the old gear train',
    ),
  },
  {
    ...base,
    id: 'encoder-bracket',
    name: 'Bracket and guard for the spindle sensor',
    note: 'Slots for belt tension.',
    needs: [
      { when: besideSpindle, qty: 1, why: 'carries the sensor' },
      { when: is('spindle-sensor', 'one-mark-a-turn', 'slotted-disc'), qty: 1, why: 'carries the sensor' },
    ],
  },
  {
    ...base,
    id: 'ring-encoder-part',
    name: 'Ring encoder for the spindle',
    note: 'Measure the spindle and the room around it first.',
    inspect: 'Runs true within 0.05 mm.',
    needs: once(is('spindle-sensor', 'ring-encoder'), 'counts the angle of the spindle'),
  },
  {
    ...base,
    id: 'line-receiver',
    name: 'Receiver for signal pairs',
    note: 'Turns pairs into single signals at the control.',
    needs: once(
      all(is('spindle-sensor', 'encoder-1000-up', 'ring-encoder'), singleEnded),
      'the control takes single signals',
    ),
  },
];
