import { not } from '../../core/condition.ts';
import { mm, type Reading } from '../../core/reading.ts';
import { leadScrewKept } from './screw.ts';

const length = { unit: 'm', show: 'length' } as const;
const points = (say: string, tasks: readonly string[], risks: readonly string[]) => ({ say, tasks, risks });

const fixedEnd = {
  ...length,
  what: 'End play of the carriage screw',
  atMost: mm(0.01),
  good: mm(0.005),
  points: points(
    'Lock nut, preload ring, or a block with plain bearings in it.',
    ['bore-bearing-seats', 'incoming-inspection', 'turn-spacers-and-registers'],
    ['plain-bearings-in-blocks', 'play-larger-than-planned'],
  ),
} as const;

/** What is measured while the carriage is made and fitted. */
export const readings: readonly Reading[] = [
  {
    ...length,
    id: 'casting-against-kit',
    task: 'verify-casting',
    what: 'Largest difference between casting and kit',
    where: 'hole distance, screw height, tunnel width',
    places: 3,
    atMost: mm(0.5),
    points: points(
      'Another version of the casting: ask the seller before you pay.',
      ['order-long-lead'],
      ['tunnel-too-tight', 'screw-wrong-length'],
    ),
  },
  {
    ...length,
    id: 'seat-shoulder',
    task: 'bore-bearing-seats',
    what: 'Shoulder of a bearing seat out of square',
    atMost: mm(0.01),
    points: points(
      'Bore and face in one setting; use the spare blank.',
      ['bore-bearing-seats', 'spare-of-each-carriage'],
      ['play-larger-than-planned', 'screw-misaligned'],
    ),
  },
  {
    ...length,
    id: 'pulley-run-out',
    task: 'bore-pulleys',
    what: 'Run-out at the teeth of a pulley',
    atMost: mm(0.05),
    points: points(
      'Bore it again from the teeth, in soft jaws.',
      ['bore-pulleys', 'spare-of-each-carriage'],
      ['bore-mismatch', 'slow-drift'],
    ),
  },
  {
    ...length,
    id: 'screw-stub-run-out',
    task: 'turn-screw-ends',
    what: 'Run-out of the turned stub',
    atMost: mm(0.02),
    points: points(
      'Set the screw true in the steady again before the next cut.',
      ['turn-screw-ends'],
      ['screw-ends-untrue'],
    ),
  },
  {
    ...length,
    id: 'brackets-in-line',
    task: 'carriage-brackets',
    what: 'Bores of the brackets out of line',
    atMost: mm(0.05),
    points: points(
      'Shim or ream together; what is out of line on the bench is worse on the bed.',
      ['carriage-brackets', 'bracket-drawings'],
      ['screw-misaligned', 'part-cannot-be-made'],
    ),
  },
  {
    ...length,
    id: 'hole-position',
    task: 'drill-bed-and-apron',
    what: 'Largest error of a hole',
    atMost: mm(0.2),
    points: points(
      'Open the hole in the bracket, never the one in the casting.',
      ['offer-up-rest', 'carriage-brackets'],
      ['casting-breaks-drill', 'screw-misaligned'],
    ),
  },
  {
    ...length,
    id: 'carriage-screw-parallel',
    task: 'align-carriage-screw',
    what: 'Carriage screw out of parallel',
    where: 'over the whole travel, in both planes',
    places: 2,
    atMost: mm(0.03),
    points: points(
      'Loosen one end, let the nut centre itself, tighten in steps.',
      ['align-carriage-screw', 'carriage-brackets'],
      ['screw-misaligned', 'stick-slip'],
    ),
  },
  {
    id: 'carriage-drag-change',
    task: 'align-carriage-screw',
    what: 'Change of the drag along the travel',
    unit: '1',
    show: 'share',
    atMost: 0.2,
    points: points(
      'Rising towards an end: that end is out of line. Rising everywhere: the strips.',
      ['align-carriage-screw', 'adjust-slides'],
      ['screw-misaligned', 'stick-slip'],
    ),
  },
  { ...fixedEnd, id: 'carriage-end-play', task: 'align-carriage-screw' },
  {
    ...fixedEnd,
    id: 'lead-screw-end-play',
    task: 'lead-screw-float',
    what: 'End play of the old lead screw',
  },
  {
    ...length,
    id: 'first-carriage-play',
    task: 'first-powered-carriage',
    what: 'Play of the carriage under power',
    when: not(leadScrewKept),
    atMost: mm(0.05),
    good: mm(0.02),
    points: points(
      'Fixed end, nut, hub, in this order.',
      ['align-carriage-screw', 'bore-pulleys'],
      ['play-larger-than-planned', 'plain-bearings-in-blocks'],
    ),
  },
];
