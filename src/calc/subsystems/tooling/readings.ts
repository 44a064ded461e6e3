import { mm, type Reading } from '../../core/reading.ts';

const length = { unit: 'm', show: 'length' } as const;
const points = (say: string, tasks: readonly string[], risks: readonly string[]) => ({ say, tasks, risks });

/** What is measured on tools and work-holding. */
export const readings: readonly Reading[] = [
  {
    ...length,
    id: 'gang-tip-height',
    task: 'set-gang-tools',
    what: 'Tip off centre height',
    atMost: mm(0.05),
    points: points('Shim that block.', ['set-gang-tools'], ['travel-lost']),
  },
  {
    ...length,
    id: 'rear-post-reach',
    task: 'fit-rear-post',
    what: 'Reach of the blade past the centre',
    atLeast: mm(1.5),
    points: points(
      'The slide runs out of travel: move the post, not the limit switch.',
      ['fit-rear-post', 'layout-sketch'],
      ['travel-lost'],
    ),
  },
  {
    id: 'changes-locked',
    task: 'fit-changer',
    what: 'Tool changes with the lock proved',
    unit: '1',
    show: 'count',
    atLeast: 200,
    points: points(
      'Lock sensor, current of the motor, chips under the turret.',
      ['fit-changer'],
      ['wrong-signal-type', 'electrical-noise'],
    ),
  },
  {
    ...length,
    id: 'touch-plate-repeat',
    task: 'set-touch-plate',
    what: 'Spread of ten touches',
    atMost: mm(0.01),
    points: points('Slower touch, clean tip.', ['set-touch-plate'], ['electrical-noise']),
  },
  {
    ...length,
    id: 'magnifier-repeat',
    task: 'set-magnifier',
    what: 'Spread of the cross put back five times',
    atMost: mm(0.01),
    points: points('A stiffer mount with a dowel.', ['set-magnifier'], ['slow-drift']),
  },
  {
    ...length,
    id: 'collet-run-out',
    task: 'fit-collet-chuck',
    what: 'Run-out of the collet chuck',
    where: 'ground pin, 40 mm from the nose',
    atMost: mm(0.02),
    points: points(
      'Skim the register of the back plate on its own spindle, while it still turns.',
      ['fit-collet-chuck', 'change-spindle-bearings'],
      ['hidden-wear'],
    ),
  },
  {
    ...length,
    id: 'bar-bush-gap',
    task: 'fit-bar-stop',
    what: 'Gap round the bar in its bush',
    atMost: mm(1),
    points: points(
      'A bush for that bar: nothing turns behind the headstock without it.',
      ['fit-bar-stop'],
      ['bar-whip'],
    ),
  },
  {
    ...length,
    id: 'drill-holder-centre',
    task: 'drill-alignment',
    what: 'Drill holder off the centre line',
    where: 'near and far',
    places: 2,
    atMost: mm(0.05),
    points: points('Shim for height, turn for angle.', ['drill-alignment'], ['missed-steps']),
  },
  {
    ...length,
    id: 'quill-return',
    task: 'fit-motor-tailstock',
    what: 'Spread of ten returns of the quill',
    atMost: mm(0.02),
    points: points('Hub, key and nut of the quill.', ['fit-motor-tailstock'], ['slow-drift', 'missed-steps']),
  },
];
