import type { NeededBy } from '../../core/part.ts';

/** Which tasks wait for the parts of this room. */
export const neededBy: readonly NeededBy[] = [
  { tasks: ['make-riser'], parts: ['riser-block', 'slotted-riser-plate-part'] },
  { tasks: ['fit-slotted-slide', 'swap-compound'], parts: ['slotted-slide-plate-part'] },
  {
    tasks: ['cross-brackets', 'fit-cross-screw'],
    parts: [
      'ball-screw-cross-12',
      'ball-screw-cross-16',
      'ball-screw-cross-8',
      'sliding-screw-cross',
      'nut-housing-cross',
      'end-block-cross',
      'rear-bracket-stock',
    ],
  },
  { tasks: ['fit-cross-screw'], parts: ['oversize-ball-set', 'double-nut-cross', 'thrust-washers-cross'] },
  { tasks: ['turn-cross-nut'], parts: ['adjustable-nut-cross'] },
  { tasks: ['bore-bearing-seats', 'cross-brackets', 'fit-cross-screw'], parts: ['bearings-cross'] },
  { tasks: ['bore-pulleys', 'fit-cross-motor'], parts: ['belt-drive-cross', 'clamp-hub-cross'] },
  { tasks: ['fit-cross-motor'], parts: ['belt-guard-cross', 'coupling-cross'] },
];
