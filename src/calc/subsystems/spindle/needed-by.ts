import type { NeededBy } from '../../core/part.ts';

/** Which tasks wait for the parts of this room. */
export const neededBy: readonly NeededBy[] = [
  {
    tasks: ['fit-out-cabinet'],
    parts: [
      'spindle-drive',
      'doubler-drive-part',
      'brake-resistor',
      'line-choke',
      'speed-interface',
      'run-relays',
      'serial-adapter',
      'line-receiver',
    ],
  },
  {
    tasks: ['spindle-plate-and-pulley', 'swap-spindle-motor'],
    parts: ['three-phase-motor', 'brushless-set', 'servo-spindle-set', 'motor-mount', 'spindle-belts'],
  },
  { tasks: ['fit-speed-adapter'], parts: ['isolated-adapter'] },
  { tasks: ['fit-motor-starter'], parts: ['motor-starter'] },
  {
    tasks: ['swap-spindle-motor', 'fit-spindle-brake', 'first-power-on-machine'],
    parts: ['chuck-retention'],
  },
  {
    tasks: ['make-sensor-bracket', 'fit-spindle-sensor'],
    parts: [
      'index-sensor',
      'slotted-disc-set',
      'encoder-low-lines',
      'encoder-line-driver',
      'encoder-belt',
      'stud-adapter',
      'encoder-bracket',
      'ring-encoder-part',
    ],
  },
];
