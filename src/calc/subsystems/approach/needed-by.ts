import type { NeededBy } from '../../core/part.ts';

/** Which tasks wait for the parts of this room. */
export const neededBy: readonly NeededBy[] = [
  {
    tasks: [
      'carriage-brackets',
      'cross-brackets',
      'make-sensor-bracket',
      'spindle-plate-and-pulley',
      'heavy-motor-mounts',
      'reversible-brackets',
      'fit-motor-tailstock',
      'first-power-on-machine',
    ],
    parts: ['bracket-stock'],
  },
  {
    tasks: ['carriage-brackets', 'cross-brackets', 'dry-fit-brackets'],
    parts: [
      'welding-plate',
      'brackets-to-drawing',
      'motor-plate-to-drawing',
      'trial-stock',
      'ready-kit-part',
    ],
  },
  {
    tasks: [
      'carriage-brackets',
      'cross-brackets',
      'reversible-brackets',
      'heavy-motor-mounts',
      'spindle-plate-and-pulley',
      'fit-motor-tailstock',
      'first-power-on-machine',
    ],
    parts: ['machine-hire'],
  },
  { tasks: ['offer-up-rest', 'align-carriage-screw'], parts: ['alignment-bar'] },
  { tasks: ['unpack-and-clear'], parts: ['donor-lathe', 'training-machine', 'machine-transport'] },
  { tasks: ['unpack-and-clear', 'build-stand'], parts: ['lifting-hire'] },
  { tasks: ['build-stand'], parts: ['stand-upgrade'] },
  { tasks: ['adjust-slides'], parts: ['gib-strips'] },
  { tasks: ['change-spindle-bearings'], parts: ['spindle-bearings'] },
  { tasks: ['pack-originals'], parts: ['resale-credit'] },
  { tasks: ['incoming-inspection'], parts: ['used-parts-saving', 'used-motor-saving', 'multimeter'] },
  {
    tasks: ['dry-fit-brackets', 'first-powered-carriage', 'fit-cross-motor', 'first-power-on-machine'],
    parts: ['fasteners', 'shims-and-compounds'],
  },
  { tasks: ['carriage-brackets', 'cross-brackets', 'fit-out-cabinet'], parts: ['drills-and-taps'] },
  {
    tasks: [
      'turn-spacers-and-registers',
      'carriage-brackets',
      'cross-brackets',
      'first-powered-carriage',
      'fit-cross-motor',
      'air-cut',
    ],
    parts: ['oils-and-grease', 'handful-of-small-things'],
  },
  { tasks: ['air-cut'], parts: ['practice-stock'] },
  { tasks: ['configure-control'], parts: ['backup-media'] },
  {
    tasks: [
      'align-carriage-screw',
      'fit-cross-screw',
      'build-stand',
      'first-powered-carriage',
      'fit-cross-motor',
      'first-power-on-machine',
    ],
    parts: ['alignment-epoxy'],
  },
  {
    tasks: ['swap-spindle-motor', 'strip-cross-slide', 'make-stage-two-usable'],
    parts: ['second-round-lot'],
  },
  { tasks: ['condition-survey'], parts: ['dial-indicator', 'lever-indicator'] },
  { tasks: ['measure-geometry'], parts: ['calipers-and-micrometer'] },
  { tasks: ['measure-friction'], parts: ['spring-scale'] },
  { tasks: ['fit-out-cabinet'], parts: ['crimpers'] },
  { tasks: ['swap-spindle-motor', 'calibrate-speed', 'turning-test'], parts: ['tachometer'] },
  { tasks: ['noise-soak'], parts: ['noise-probe'] },
  {
    tasks: ['strip-carriage', 'strip-cross-slide', 'swap-spindle-motor', 'first-power-on-machine'],
    parts: ['pullers-and-spanners'],
  },
  {
    tasks: ['carriage-brackets', 'cross-brackets', 'fit-out-cabinet'],
    parts: ['tapping-drills', 'small-taps'],
  },
  { tasks: ['first-power-on-machine'], parts: ['spare-belt', 'spare-coupling-element', 'spare-fuses'] },
];
