import type { NeededBy } from '../../core/part.ts';

/** Which tasks wait for the parts of this room. */
export const neededBy: readonly NeededBy[] = [
  {
    tasks: ['carriage-brackets', 'first-powered-carriage'],
    parts: [
      'apron-plate',
      'nut-bracket-stock-carriage',
      'end-block-carriage',
      'support-block-carriage',
      'gearbox-carriage',
      'nut-housing-carriage',
    ],
  },
  {
    tasks: ['turn-screw-ends', 'carriage-brackets', 'align-carriage-screw'],
    parts: [
      'ball-screw-carriage',
      'ball-screw-carriage-preloaded',
      'ball-screw-carriage-ground',
      'sliding-screw-carriage',
      'screw-end-machining',
    ],
  },
  { tasks: ['turn-screw-ends'], parts: ['screw-end-inserts'] },
  {
    tasks: ['bore-bearing-seats', 'carriage-brackets', 'align-carriage-screw'],
    parts: ['bearings-carriage'],
  },
  {
    tasks: ['bore-pulleys', 'first-powered-carriage'],
    parts: ['belt-drive-carriage', 'belt-drive-carriage-reduction', 'clamp-hub-carriage'],
  },
  { tasks: ['first-powered-carriage'], parts: ['belt-guard-carriage', 'coupling-carriage'] },
  { tasks: ['first-powered-carriage', 'fit-cross-motor'], parts: ['axis-brake'] },
  { tasks: ['lead-screw-float'], parts: ['thrust-washers-lead-screw'] },
];
