import { mm, type Reading } from '../../core/reading.ts';

const length = { unit: 'm', show: 'length' } as const;
const points = (say: string, tasks: readonly string[], risks: readonly string[]) => ({ say, tasks, risks });

/** What is measured while the cross slide is made and fitted. */
export const readings: readonly Reading[] = [
  {
    ...length,
    id: 'cross-height',
    task: 'cross-brackets',
    what: 'Screw height against the slide',
    atMost: mm(0.1),
    points: points(
      'Shim the block; a nut pulled sideways wears in a month.',
      ['cross-brackets', 'measure-geometry'],
      ['tunnel-too-tight', 'screw-misaligned'],
    ),
  },
  {
    ...length,
    id: 'cross-nut-play',
    task: 'turn-cross-nut',
    what: 'Play of the new nut on the old screw',
    where: 'three places',
    places: 3,
    atMost: mm(0.03),
    points: points(
      'Even play is the setting screw; play in the middle only is the worn screw.',
      ['turn-cross-nut', 'spare-of-each-cross'],
      ['play-larger-than-planned'],
    ),
  },
  {
    ...length,
    id: 'saddle-clearance',
    task: 'relieve-saddle',
    what: 'Least clearance round the nut',
    where: 'whole travel',
    atLeast: mm(1),
    points: points(
      'A little more off, slowly: a nut that rubs bends the screw.',
      ['relieve-saddle'],
      ['tunnel-too-tight'],
    ),
  },
  {
    ...length,
    id: 'saddle-casting-left',
    task: 'relieve-saddle',
    what: 'Least casting left',
    atLeast: mm(5),
    points: points(
      'Stop here: a plate below the web carries what is missing, or a smaller nut goes in.',
      ['relieve-saddle', 'freeze-the-path'],
      ['saddle-weakened'],
    ),
  },
  {
    ...length,
    id: 'cross-play-fitted',
    task: 'fit-cross-screw',
    what: 'Play of the cross slide',
    atMost: mm(0.03),
    good: mm(0.01),
    points: points(
      'It doubles on the diameter. Fixed end first, then larger balls or the double nut.',
      ['cross-brackets', 'bore-bearing-seats'],
      ['play-larger-than-planned', 'plain-bearings-in-blocks'],
    ),
  },
  {
    ...length,
    id: 'cross-screw-parallel',
    task: 'fit-cross-screw',
    what: 'Cross screw out of parallel',
    where: 'over the travel',
    atMost: mm(0.02),
    points: points(
      'Loosen the front block, run the slide to it, tighten there.',
      ['fit-cross-screw', 'cross-brackets'],
      ['screw-misaligned', 'stick-slip'],
    ),
  },
  {
    ...length,
    id: 'slotted-slide-flat',
    task: 'fit-slotted-slide',
    what: 'Slotted slide out of flat',
    atMost: mm(0.02),
    points: points('Scrape or mill again.', ['fit-slotted-slide'], ['machine-too-flexible']),
  },
  {
    ...length,
    id: 'slots-parallel',
    task: 'fit-slotted-slide',
    what: 'Slots out of parallel with the travel',
    atMost: mm(0.02),
    points: points(
      'Gang tools then lose height along the slide: set it again before it is dowelled.',
      ['fit-slotted-slide', 'set-gang-tools'],
      ['machine-too-flexible'],
    ),
  },
  {
    ...length,
    id: 'tool-lift',
    task: 'fit-cross-motor',
    what: 'Lift and tilt at the tool',
    where: '150 N by hand',
    atMost: mm(0.03),
    points: points(
      'Strips first, then the riser and its bolts.',
      ['adjust-slides', 'make-riser'],
      ['machine-too-flexible', 'stick-slip'],
    ),
  },
];
