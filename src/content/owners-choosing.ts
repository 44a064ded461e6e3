import type { Family } from '../calc/core/family.ts';
import { type NamedPath, pathOf } from './reference-paths.ts';
import { usuallyOwned } from './usually-owned.ts';

const shop = { owned: usuallyOwned, facts: { 'hours-per-week': 5 } };

const plain = (name: string, rest: Partial<Family>): Family => ({
  name,
  piecesPerBatch: 40,
  batchesPerYear: 10,
  byHand: { setUp: 0.4, piece: 8 / 60 },
  byProgram: { firstSetUp: 2, setUp: 0.4, attended: 3 / 60 },
  shape: 'plain',
  ...rest,
});

/** Six owners whose right answers differ, made up for this site; the story says what decides. */
export const choosingOwners: readonly NamedPath[] = [
  {
    id: 'measures-more-than-turns',
    name: 'Measures more than turns',
    story:
      'Bushes and spacers for old motorcycles, never two alike. Half of every evening goes on dials, callipers and second thoughts. A readout ends that; a program for a single bush takes longer than the bush.',
    path: pathOf({ purpose: 'one-off-repairs', 'thread-kinds': 'no-threads' }, 'medium', shop),
  },
  {
    id: 'brass-by-the-dozen',
    name: 'Brass by the dozen',
    story:
      'Four hundred brass ferrules a year: drill, turn, part off. No curves, no threads larger than a die. A turret on the tailstock, a lever collet and stops do three quarters of it for the price of one ball screw axis.',
    path: pathOf({ purpose: 'repeat-batches', 'thread-kinds': 'no-threads', materials: 'brass' }, 'medium', {
      ...shop,
      families: [plain('Ferrules', {})],
    }),
  },
  {
    id: 'handles-on-the-only-lathe',
    name: 'Handles on the only lathe',
    story:
      'Curved handles and threaded knobs in batches, on the only lathe. Programs earn their keep here, but the machine that makes the brackets is the machine that is taken apart: carriage first, the rest when it runs.',
    path: pathOf(
      {
        purpose: ['repeat-batches', 'profiles', 'thread-cutting'],
        'which-lathe': 'only-lathe',
        'order-of-work': 'in-stages',
      },
      'medium',
      {
        ...shop,
        families: [
          plain('Handles', {
            byHand: { setUp: 0.5, piece: 35 / 60 },
            byProgram: { firstSetUp: 3, setUp: 0.4, attended: 6 / 60 },
            shape: 'shaped',
          }),
        ],
      },
    ),
  },
  {
    id: 'school-machine-in-the-shed',
    name: 'A school machine in the shed',
    story:
      'A training lathe with a dead control, sold off by a school. Ball screws, guards and mounts are there; once bed and spindle have been measured, nothing else gives as much lathe for the money.',
    path: pathOf(
      {
        purpose: ['repeat-batches', 'profiles'],
        'which-lathe': 'dead-training-machine',
        'mains-supply': 'volts-230',
      },
      'small',
      shop,
    ),
  },
  {
    id: 'sixteen-odd-parts-a-year',
    name: 'Sixteen odd parts a year',
    story:
      'Two batches of eight shaped parts a year, and a trade of its own that pays better than turning. A shop round the corner asks $25 each: five years of that cost less than the conversion, and no evening is spent on it.',
    path: pathOf({ purpose: ['profiles', 'repeat-batches'], 'which-lathe': 'spare-lathe' }, 'medium', {
      ...shop,
      families: [
        plain('Odd shapes', {
          piecesPerBatch: 8,
          batchesPerYear: 2,
          byHand: { setUp: 0.5, piece: 45 / 60 },
          byProgram: { firstSetUp: 3, setUp: 0.5, attended: 10 / 60 },
          shape: 'shaped',
          outsidePrice: 25,
        }),
      ],
    }),
  },
  {
    id: 'hollow-near-the-chuck',
    name: 'Hollow near the chuck',
    story:
      'Sixty years of short work have worn the bed by a tenth of a millimetre near the chuck. A motor moves the saddle along the same hollow: the money belongs in a lathe with a sound bed.',
    path: pathOf({ purpose: 'repeat-batches', condition: 'worn-bed' }, 'medium', {
      ...shop,
      families: [plain('Spacers', {})],
    }),
  },
];
