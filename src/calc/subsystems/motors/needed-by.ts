import type { NeededBy } from '../../core/part.ts';

/** Which tasks wait for the parts of this room. */
export const neededBy: readonly NeededBy[] = [
  {
    tasks: ['turn-spacers-and-registers', 'heavy-motor-mounts', 'bench-motors'],
    parts: [
      'stepper-57',
      'stepper-86',
      'closed-set-57',
      'closed-set-86',
      'servo-400w',
      'servo-750w',
      'used-dc-servo-set',
    ],
  },
  { tasks: ['bench-motors'], parts: ['built-in-drive-surcharge'] },
  { tasks: ['fit-out-cabinet', 'bench-motors'], parts: ['drive-50v', 'drive-80v', 'drive-board'] },
  { tasks: ['fit-hand-cranks', 'first-powered-carriage', 'fit-cross-motor'], parts: ['crank-kit'] },
  { tasks: ['fit-motor-tailstock'], parts: ['tailstock-motor-set', 'belt-drive-tailstock'] },
  { tasks: ['fit-out-cabinet'], parts: ['enclosed-supply-part', 'dc-fuses'] },
  { tasks: ['build-transformer-supply'], parts: ['transformer-supply-part'] },
];
