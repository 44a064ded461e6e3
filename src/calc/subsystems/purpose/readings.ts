import { mm, type Reading } from '../../core/reading.ts';

const survey = { task: 'condition-survey', list: 'survey', unit: 'm', show: 'length' } as const;
const points = (say: string, tasks: readonly string[], risks: readonly string[]) => ({ say, tasks, risks });

const loose = points(
  'Set the strips of that slide first; a slide that lifts is mended before a motor is sized for it.',
  ['adjust-slides'],
  ['stick-slip', 'machine-too-flexible'],
);
const headstock = points(
  'The spindle bearings are set or changed before money is spent on the rest.',
  ['change-spindle-bearings'],
  ['hidden-wear', 'machine-too-flexible'],
);

const surveyed: readonly Reading[] = [
  {
    ...survey,
    id: 'bed-wear',
    what: 'Bed wear near the chuck',
    where: 'against a face that is not worn, chuck end less tailstock end',
    atMost: mm(0.05),
    good: mm(0.02),
    points: points(
      'A worn bed turns tapers under any control: think again about this lathe before anything is bought.',
      ['adjust-slides', 'write-job-list'],
      ['hidden-wear', 'stick-slip'],
    ),
  },
  {
    ...survey,
    id: 'spindle-lift',
    what: 'Lift of the spindle nose',
    where: 'lever under the nose, 200 N',
    atMost: mm(0.03),
    good: mm(0.01),
    points: headstock,
  },
  {
    ...survey,
    id: 'nose-run-out',
    what: 'Run-out of the spindle nose',
    atMost: mm(0.01),
    points: headstock,
  },
  {
    ...survey,
    id: 'carriage-lift',
    what: 'Lift of the carriage',
    where: '150 N',
    atMost: mm(0.03),
    points: loose,
  },
  {
    ...survey,
    id: 'cross-slide-lift',
    what: 'Lift of the cross slide',
    where: '150 N',
    atMost: mm(0.03),
    points: loose,
  },
  {
    ...survey,
    id: 'facing-hollow',
    what: 'Hollow of a faced disc',
    where: 'over 150 mm; below zero where it stands proud',
    atLeast: 0,
    atMost: mm(0.02),
    points: points(
      'The cross slide is not square to the spindle: look at its strips and at the headstock.',
      ['adjust-slides', 'two-collar-baseline'],
      ['bed-twist', 'hidden-wear'],
    ),
  },
  {
    ...survey,
    id: 'tailstock-height',
    what: 'Tailstock above the headstock',
    where: 'bar between centres; below zero where it is low',
    atLeast: 0,
    atMost: mm(0.04),
    points: points(
      'Shim a low tailstock before the drilling test is judged.',
      ['drilling-test'],
      ['hidden-wear'],
    ),
  },
  ...(
    [
      ['tailstock-upright', 'Quill of the tailstock out of true, upright', mm(0.02)],
      ['tailstock-sideways', 'Quill of the tailstock out of true, sideways', mm(0.015)],
    ] as const
  ).map(
    ([id, what, atMost]): Reading => ({
      ...survey,
      id,
      what,
      where: 'over 100 mm',
      atMost,
      points: points(
        'Holes drilled from it run off: set it over, or drill from the tool post.',
        ['drilling-test', 'drill-alignment'],
        ['hidden-wear'],
      ),
    }),
  ),
  {
    ...survey,
    id: 'play-carriage-today',
    what: 'Play of the half-nut today',
    points: points(
      'What the old drive had; the new one is compared with it.',
      ['axis-calibration'],
      ['play-larger-than-planned'],
    ),
  },
  {
    ...survey,
    id: 'play-cross-today',
    what: 'Play of the cross screw today',
    points: points(
      'What the old screw had; the new one is compared with it.',
      ['axis-calibration'],
      ['play-larger-than-planned'],
    ),
  },
];

/** What is measured before anything is bought. */
export const readings: readonly Reading[] = [
  ...surveyed,
  {
    id: 'slides-drag-change',
    task: 'adjust-slides',
    what: 'Change of the pull along the travel',
    unit: '1',
    show: 'share',
    atMost: 0.2,
    points: points(
      'Tight in the middle or at an end: the way is worn there and wants scraping, or the strip is bent.',
      ['condition-survey'],
      ['stick-slip', 'hidden-wear'],
    ),
  },
  {
    id: 'slides-lift-after',
    task: 'adjust-slides',
    what: 'Lift of the slides',
    where: '150 N, both ends and the middle',
    places: 3,
    unit: 'm',
    show: 'length',
    atMost: mm(0.03),
    points: points('A strip that still lifts is bent or too thin.', ['condition-survey'], ['stick-slip']),
  },
  ...(['carriage', 'cross'] as const).map(
    (slide): Reading => ({
      id: `pull-${slide}`,
      task: 'measure-friction',
      what: slide === 'carriage' ? 'Pull that starts the carriage' : 'Pull that starts the cross slide',
      where: 'both ways, three places',
      places: 6,
      unit: 'N',
      show: 'force',
      points: points(
        'Type the largest on the lathe page: the motors are sized on it.',
        ['freeze-the-path'],
        ['missed-steps', 'stick-slip'],
      ),
    }),
  ),
  {
    id: 'new-bearings-lift',
    task: 'change-spindle-bearings',
    what: 'Lift of the nose on new bearings',
    where: '200 N',
    unit: 'm',
    show: 'length',
    atMost: mm(0.01),
    points: points(
      'Preload or a seat is wrong: warm after an hour tells too much of it, lift too little.',
      ['change-spindle-bearings'],
      ['hidden-wear'],
    ),
  },
  {
    id: 'new-bearings-run-out',
    task: 'change-spindle-bearings',
    what: 'Run-out of the nose on new bearings',
    unit: 'm',
    show: 'length',
    atMost: mm(0.01),
    points: points(
      'Dirt under a ring, or a bearing in the wrong place.',
      ['change-spindle-bearings'],
      ['hidden-wear'],
    ),
  },
  {
    id: 'clamped-brackets-give',
    task: 'reversible-brackets',
    what: 'Movement of a clamped bracket',
    where: 'pushed with 150 N',
    unit: 'm',
    show: 'length',
    atMost: mm(0.02),
    points: points(
      'More clamping face, or a stop against the casting; a longer screw only bends the plate.',
      ['bracket-drawings'],
      ['play-larger-than-planned', 'screw-misaligned'],
    ),
  },
];
