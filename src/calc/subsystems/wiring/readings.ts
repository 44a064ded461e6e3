import { mm, type Reading } from '../../core/reading.ts';

const points = (say: string, tasks: readonly string[], risks: readonly string[]) => ({ say, tasks, risks });

const earth = {
  where: 'low-ohm meter, lead resistance taken off',
  unit: 'ohm',
  show: 'resistance',
  atMost: 0.1,
} as const;

/** What is measured on wiring and guards. */
export const readings: readonly Reading[] = [
  {
    ...earth,
    id: 'cabinet-earth',
    task: 'fit-out-cabinet',
    what: 'Earth from bar to backplate and door',
    places: 2,
    points: points(
      'Scrape paint, star washer, a braid to the door. No power before it reads right.',
      ['fit-out-cabinet'],
      ['residual-device-trips', 'electrical-noise'],
    ),
  },
  {
    ...earth,
    id: 'machine-earth',
    task: 'bond-and-measure-earths',
    what: 'Earth to bed, door and each motor',
    places: 4,
    points: points(
      'No motor on mains before each of them reads right: screens are not earths.',
      ['bond-and-measure-earths', 'fit-out-cabinet'],
      ['residual-device-trips', 'electrical-noise'],
    ),
  },
  {
    id: 'signal-cable-distance',
    task: 'run-cables',
    what: 'Least distance of signal cables from spindle-drive leads',
    unit: 'm',
    show: 'length',
    atLeast: mm(150),
    points: points('Cross at right angles where they must meet.', ['run-cables'], ['electrical-noise']),
  },
  {
    id: 'switch-before-stop',
    task: 'fit-home-switches',
    what: 'Switch acts before the hard stop',
    unit: 'm',
    show: 'length',
    atLeast: mm(5),
    points: points(
      'Move the flag: at a fast move the slide needs that way to stop.',
      ['fit-home-switches', 'rapid-search'],
      ['wrong-direction', 'travel-lost'],
    ),
  },
];
