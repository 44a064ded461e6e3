import { not } from '../../core/condition.ts';
import { mm, type Reading } from '../../core/reading.ts';
import { looseNose } from './drive.ts';

const points = (say: string, tasks: readonly string[], risks: readonly string[]) => ({ say, tasks, risks });

const stopTime = {
  task: 'swap-spindle-motor',
  what: 'Time to stop',
  where: 'from top speed, bare spindle',
  unit: 's',
  show: 'seconds',
} as const;

/** What is measured on the spindle and its sensor. */
export const readings: readonly Reading[] = [
  {
    id: 'spindle-pulley-run-out',
    task: 'spindle-plate-and-pulley',
    what: 'Run-out of the spindle motor pulley',
    unit: 'm',
    show: 'length',
    atMost: mm(0.05),
    points: points(
      'Bore it again now: once the old motor is out this lathe cannot.',
      ['spindle-plate-and-pulley', 'spare-of-each-spindle'],
      ['bore-mismatch', 'motor-does-not-fit'],
    ),
  },
  {
    ...stopTime,
    id: 'stop-time-locked-nose',
    when: not(looseNose),
    atMost: 3,
    points: points(
      'Longer ramp means a longer danger: check resistor and drive setting.',
      ['swap-spindle-motor', 'fit-spindle-brake'],
      ['stop-does-not-stop'],
    ),
  },
  {
    ...stopTime,
    id: 'stop-time-screwed-nose',
    when: looseNose,
    atLeast: 5,
    points: points(
      'Too quick for a chuck that can unscrew: lengthen the ramp, or fit the lock.',
      ['swap-spindle-motor'],
      ['chuck-unscrews'],
    ),
  },
  {
    id: 'spindle-motor-case',
    task: 'swap-spindle-motor',
    what: 'Motor case after 30 minutes at a third of its speed',
    unit: '°C',
    show: 'temperature',
    atMost: 70,
    points: points(
      'A fan of its own, or a slower belt and a faster motor.',
      ['swap-spindle-motor', 'calibrate-speed'],
      ['spindle-weak-when-slow'],
    ),
  },
  {
    id: 'sensor-counts-lost',
    task: 'fit-spindle-sensor',
    what: 'Counts lost in 100 turns',
    unit: '1',
    show: 'count',
    atMost: 0,
    points: points(
      'Gap, belt, screen; then fewer lines or a faster counter.',
      ['fit-spindle-sensor', 'run-cables', 'configure-control'],
      ['counts-too-fast', 'electrical-noise', 'wrong-signal-type'],
    ),
  },
  {
    id: 'speed-scale-error',
    task: 'calibrate-speed',
    what: 'Error of the speed',
    where: 'three speeds, no load',
    places: 3,
    unit: '1',
    show: 'share',
    atMost: 0.02,
    points: points(
      'One factor off is the scale; a constant off is the zero of the voltage.',
      ['calibrate-speed', 'fit-speed-adapter'],
      ['over-speed-after-belt-change', 'thread-does-not-track'],
    ),
  },
];
