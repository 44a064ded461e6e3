import { not } from '../../core/condition.ts';
import { mm, type Reading } from '../../core/reading.ts';
import { smallLathe } from '../carriage/screw.ts';
import { synchroniser } from './paths.ts';

const proof = { list: 'proof', unit: 'm', show: 'length' } as const;
const points = (say: string, tasks: readonly string[], risks: readonly string[]) => ({ say, tasks, risks });

const push = {
  ...proof,
  task: 'turning-test',
  what: 'Movement of the tool when pushed',
  where: '150 N, three ways',
  places: 3,
  good: mm(0.02),
  points: points(
    'Play first, then strips, then the riser and the post: find the joint that moves with a second indicator.',
    ['fit-cross-motor', 'axis-calibration', 'adjust-slides'],
    ['machine-too-flexible', 'play-larger-than-planned'],
  ),
} as const;

const turned: readonly Reading[] = [
  {
    ...proof,
    id: 'step-bar',
    task: 'turning-test',
    what: 'Error of the stepped bar on diameter',
    where: 'three diameters, aluminium',
    places: 3,
    when: not(synchroniser),
    atMost: mm(0.02),
    good: mm(0.01),
    points: points(
      'All steps off by the same: the tool offset. By a share: steps per millimetre. On one side only: play.',
      ['axis-calibration', 'tool-table-and-backup'],
      ['diameter-radius-mix-up', 'play-larger-than-planned'],
    ),
  },
  {
    ...proof,
    id: 'taper',
    task: 'turning-test',
    what: 'Taper over 100 mm',
    atMost: mm(0.02),
    good: mm(0.01),
    points: points(
      'Compare with the bars turned before: where the taper came in tells what twisted.',
      ['two-collar-baseline', 'two-collar-after-carriage', 'two-collar-after-spindle', 'build-stand'],
      ['bed-twist'],
    ),
  },
  {
    ...proof,
    id: 'position-repeat',
    task: 'turning-test',
    what: 'Spread of ten returns',
    where: 'from a fast move',
    atMost: mm(0.01),
    good: mm(0.005),
    points: points(
      'Creeping one way is lost steps or a loose hub; to and fro is play or stick-slip.',
      ['rapid-search', 'bore-pulleys', 'axis-calibration'],
      ['slow-drift', 'missed-steps', 'stick-slip'],
    ),
  },
  {
    ...proof,
    id: 'ball-step',
    task: 'turning-test',
    what: 'Step on a 20 mm ball where the cross slide turns back',
    when: not(synchroniser),
    atMost: mm(0.03),
    points: points(
      'Half of the step is the play of the cross slide: cure it in nut and fixed end.',
      ['fit-cross-screw', 'axis-calibration'],
      ['play-larger-than-planned'],
    ),
  },
  { ...push, id: 'push-at-tool', when: not(smallLathe), atMost: mm(0.05) },
  { ...push, id: 'push-at-tool-small', when: smallLathe, atMost: mm(0.08) },
  {
    ...proof,
    id: 'warm-drift',
    task: 'turning-test',
    what: 'Drift of diameter in the first 45 minutes',
    atMost: mm(0.03),
    good: mm(0.015),
    points: points(
      'The cross screw grows from its fixed end: run it warm before a close fit.',
      ['fit-cross-screw', 'tool-table-and-backup'],
      ['motors-too-hot'],
    ),
  },
  {
    list: 'proof',
    id: 'speed-lost-in-cut',
    task: 'turning-test',
    what: 'Speed lost under a 1 mm cut',
    unit: '1',
    show: 'share',
    points: points(
      'Threads cut while the spindle sags: note it, and compare when a thread fades.',
      ['threading-test', 'calibrate-speed'],
      ['spindle-weak-when-slow', 'thread-does-not-track'],
    ),
  },
];

const worked: readonly Reading[] = [
  {
    ...proof,
    id: 'first-piece',
    task: 'air-cut',
    what: 'Error of the first soft piece',
    when: not(synchroniser),
    atMost: mm(0.05),
    points: points(
      'Twice or half the size is diameter taken for radius; a little off is the tool offset.',
      ['configure-control', 'axis-calibration'],
      ['diameter-radius-mix-up', 'wrong-direction'],
    ),
  },
  {
    ...proof,
    id: 'second-piece',
    task: 'air-cut',
    what: 'Error of the second soft piece',
    when: not(synchroniser),
    atMost: mm(0.02),
    points: points(
      'An offset that did not take: the tool touches another place than was typed.',
      ['axis-calibration', 'tool-table-and-backup'],
      ['diameter-radius-mix-up'],
    ),
  },
  {
    ...proof,
    id: 'thread-pitch',
    task: 'threading-test',
    what: 'Pitch error over 25 mm',
    atMost: mm(0.03),
    good: mm(0.01),
    points: points(
      'A steady error is steps per millimetre or sensor lines; a growing one is speed that sags with one mark a turn.',
      ['axis-calibration', 'configure-control', 'fit-spindle-sensor'],
      ['thread-does-not-track', 'counts-too-fast'],
    ),
  },
  {
    ...proof,
    id: 'thread-re-entry',
    task: 'threading-test',
    what: 'Split of a pass after power off',
    where: 'counting sensor only',
    atMost: mm(0.03),
    points: points(
      'Home again before the pass; if it still splits, home or the mark of the sensor wanders.',
      ['homing-and-soft-limits', 'fit-spindle-sensor'],
      ['thread-does-not-track', 'position-lost-at-stop'],
    ),
  },
  {
    ...proof,
    id: 'drill-return',
    task: 'drilling-test',
    what: 'Zero after an 8 mm drill, 20 deep',
    atMost: mm(0.01),
    good: mm(0.005),
    points: points(
      'The carriage was pushed back: smaller drill, pilot hole, shorter pecks, more current.',
      ['rapid-search', 'first-powered-carriage'],
      ['missed-steps'],
    ),
  },
  {
    ...proof,
    id: 'largest-drill-found',
    task: 'drilling-test',
    what: 'Largest drill that passed',
    points: points('Times 0.8 it goes on the machine card.', ['machine-card'], ['missed-steps']),
  },
  {
    list: 'proof',
    id: 'ten-off-good',
    task: 'first-real-part',
    what: 'Good parts of ten',
    when: not(synchroniser),
    unit: '1',
    show: 'count',
    atLeast: 10,
    points: points(
      'Sort the bad ones: one dimension only is an offset, all of them is play or drift.',
      ['turning-test', 'snag-list'],
      ['slow-drift', 'diameter-radius-mix-up', 'machine-too-flexible'],
    ),
  },
  {
    list: 'proof',
    id: 'ten-off-spread',
    task: 'first-real-part',
    what: 'Spread of the ten, as a share of the tolerance',
    when: not(synchroniser),
    unit: '1',
    show: 'share',
    atMost: 0.5,
    points: points(
      'A drift through the ten is warmth or wear of the tool; scatter is play.',
      ['turning-test', 'axis-calibration'],
      ['play-larger-than-planned', 'slow-drift'],
    ),
  },
  {
    ...proof,
    id: 'play-after-ten-hours',
    task: 'snag-list',
    what: 'Play gained in ten hours of use',
    atMost: mm(0.01),
    points: points(
      'A hub, a lock nut or a bracket has settled: mark it with paint and tighten.',
      ['axis-calibration', 'align-carriage-screw'],
      ['slow-drift'],
    ),
  },
];

/** List B: what the finished machine proves on metal. */
export const proveReadings: readonly Reading[] = [...turned, ...worked];
