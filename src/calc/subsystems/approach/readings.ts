import { mm, type Reading } from '../../core/reading.ts';
import { carriageDriven, crossDriven } from '../motors/driven.ts';
import { homeSpread } from '../wiring/homing.ts';
import { proveReadings } from './readings-prove.ts';

const length = { unit: 'm', show: 'length' } as const;
const points = (say: string, tasks: readonly string[], risks: readonly string[]) => ({ say, tasks, risks });

const twist = points(
  'A bracket, a foot or the bench has bent the bed: loosen the last thing that was bolted on and turn the bar again.',
  ['build-stand', 'align-carriage-screw', 'swap-spindle-motor'],
  ['bed-twist'],
);

const early: readonly Reading[] = [
  {
    ...length,
    id: 'screw-end-run-out',
    task: 'incoming-inspection',
    what: 'Run-out of a turned screw end',
    atMost: mm(0.03),
    points: points(
      'Send it back, or have the end turned again: an end out of true wears its bearing.',
      ['order-long-lead', 'turn-screw-ends'],
      ['screw-ends-untrue'],
    ),
  },
  {
    ...length,
    id: 'screw-play-new',
    task: 'incoming-inspection',
    what: 'Play of a new ball screw',
    atMost: mm(0.05),
    points: points(
      'Larger balls or another nut before it is built in.',
      ['order-long-lead', 'fit-cross-screw'],
      ['play-larger-than-planned'],
    ),
  },
  {
    ...length,
    id: 'bore-to-shaft',
    task: 'incoming-inspection',
    what: 'Largest gap between a bore and its shaft',
    atMost: mm(0.01),
    points: points(
      'Bore it to size, or sleeve it, while the lathe can still do it.',
      ['bore-pulleys', 'spindle-plate-and-pulley'],
      ['bore-mismatch'],
    ),
  },
  {
    ...length,
    id: 'bed-twist-metre',
    task: 'build-stand',
    what: 'Twist of the bed over a metre',
    where: 'today, and a week later',
    places: 2,
    atMost: mm(0.02),
    points: points('Set the feet again and wait a week more.', ['build-stand'], ['bed-twist']),
  },
  {
    ...length,
    id: 'collars-before',
    task: 'two-collar-baseline',
    what: 'Difference of the two collars before',
    good: mm(0.02),
    points: twist,
  },
  {
    ...length,
    id: 'spacer-faces',
    task: 'turn-spacers-and-registers',
    what: 'Faces of a spacer out of parallel',
    atMost: mm(0.01),
    points: points(
      'Face both sides in one setting, or on a stub turned true.',
      ['turn-spacers-and-registers'],
      ['play-larger-than-planned'],
    ),
  },
  {
    ...length,
    id: 'collars-after-carriage',
    task: 'two-collar-after-carriage',
    what: 'Change of the two collars',
    atMost: mm(0.02),
    points: twist,
  },
  {
    ...length,
    id: 'collars-after-spindle',
    task: 'two-collar-after-spindle',
    what: 'Change of the two collars',
    atMost: mm(0.02),
    points: twist,
  },
  {
    ...length,
    id: 'stage-one-return',
    task: 'make-stage-one-usable',
    what: 'Spread of ten returns of the carriage',
    atMost: mm(0.01),
    points: points(
      'A loose hub or lost steps: cure it now, the later stages stand on it.',
      ['first-powered-carriage', 'bore-pulleys'],
      ['slow-drift', 'missed-steps'],
    ),
  },
];

const play = points(
  'Find it with the indicator: fixed end first, then nut, then hub. Compensation does not hold a slide against the cut.',
  ['align-carriage-screw', 'fit-cross-screw', 'lead-screw-float'],
  ['play-larger-than-planned', 'plain-bearings-in-blocks'],
);
const scale = points(
  'Lead, ratio or drive setting is wrong if it is off by a round share; otherwise map the screw.',
  ['configure-control', 'measure-existing-axes'],
  ['wrong-direction'],
);
const home = points(
  'A plunger or a motor mark repeats better than an inductive sensor; tighten flag and bracket first.',
  ['fit-home-switches'],
  ['electrical-noise', 'slow-drift'],
);

const axis = { list: 'proof', ...length } as const;
const calibrated: readonly Reading[] = [
  ...(
    [
      ['carriage', carriageDriven],
      ['cross', crossDriven],
    ] as const
  ).map(
    ([slide, when]): Reading => ({
      ...axis,
      id: `scale-${slide}`,
      task: 'axis-calibration',
      what: slide === 'carriage' ? 'Error of the carriage in 100 mm' : 'Error of the cross slide in 100 mm',
      where: 'a shorter move, in proportion',
      when,
      atMost: mm(0.02),
      good: mm(0.01),
      points: scale,
    }),
  ),
  {
    ...axis,
    id: 'play-carriage',
    task: 'axis-calibration',
    what: 'Play of the carriage',
    where: 'from both sides, three places',
    places: 3,
    when: carriageDriven,
    atMost: mm(0.05),
    good: mm(0.02),
    points: play,
  },
  {
    ...axis,
    id: 'play-cross',
    task: 'axis-calibration',
    what: 'Play of the cross slide, of its own movement',
    where: 'from both sides, three places',
    places: 3,
    when: crossDriven,
    atMost: mm(0.03),
    good: mm(0.01),
    points: play,
  },
  {
    ...axis,
    id: 'fixed-end-float',
    task: 'axis-calibration',
    what: 'End play of a screw at its fixed end',
    atMost: mm(0.01),
    good: mm(0.005),
    points: points(
      'Lock nut, preload ring or a plain bearing in the block.',
      ['bore-bearing-seats', 'align-carriage-screw', 'lead-screw-float'],
      ['plain-bearings-in-blocks', 'play-larger-than-planned'],
    ),
  },
  {
    ...axis,
    id: 'home-repeat-cross',
    task: 'homing-and-soft-limits',
    what: 'Spread of ten homings, cross slide',
    where: 'power off twice between',
    when: crossDriven,
    atMost: homeSpread.cross,
    good: mm(0.005),
    points: home,
  },
  {
    ...axis,
    id: 'home-repeat-carriage',
    task: 'homing-and-soft-limits',
    what: 'Spread of ten homings, carriage',
    where: 'power off twice between',
    when: carriageDriven,
    atMost: homeSpread.carriage,
    good: mm(0.02),
    points: home,
  },
  {
    ...axis,
    id: 'lost-in-200-cycles',
    task: 'rapid-search',
    what: 'Place lost in 200 fast cycles',
    atMost: mm(0.01),
    points: points(
      'Keep less speed and less acceleration, or find the tight place.',
      ['rapid-search', 'align-carriage-screw', 'fit-cross-screw'],
      ['missed-steps', 'stick-slip', 'lock-left-on'],
    ),
  },
  {
    list: 'proof',
    id: 'false-signals',
    task: 'noise-soak',
    what: 'False inputs and lost counts in 30 minutes',
    unit: '1',
    show: 'count',
    atMost: 0,
    points: points(
      'Screens, distance to the spindle-drive leads, filter; then one input after the other unplugged.',
      ['run-cables', 'fit-out-cabinet', 'fit-spindle-sensor'],
      ['electrical-noise', 'counts-too-fast', 'wrong-signal-type'],
    ),
  },
];

export const readings: readonly Reading[] = [...early, ...calibrated, ...proveReadings];
