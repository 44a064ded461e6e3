import { any, is, not } from '../../core/condition.ts';
import type { Risk } from '../../core/risk.ts';
import { hasSpareLathe, nothingDisturbed, synchroniser, trainingMachine } from './paths.ts';

/** What happens to projects as a whole. */
export const projectRisks: readonly Risk[] = [
  {
    id: 'scope-creep',
    subsystem: 'approach',
    name: 'The job grows: "while it is apart"',
    cause: 'A changer, an enclosure, new paint, each small on its own.',
    effect: 'A third to twice as much money and time.',
    sign: 'A new decision after the path was frozen.',
    prevent: 'A list called "later", and stages that end with a working lathe.',
    chance: [0.35, 0.55, 0.75],
    money: [100, 350, 1500],
    hours: [10, 40, 150],
    kind: 'other',
    stage: 'design-and-order',
    when: { kind: 'always' },
    levers: [
      { when: is('tool-holding', 'automatic-changer'), by: 1.3, why: 'a changer draws more after it' },
      { when: is('chips-and-coolant', 'flood'), by: 1.3, why: 'an enclosure draws more after it' },
      { when: is('order-of-work', 'in-stages'), by: 0.5, why: 'each stage ends with a working lathe' },
      { when: synchroniser, by: 0.5, why: 'a small job' },
    ],
    countedIn: 'nowhere',
  },
  {
    id: 'project-stalls',
    subsystem: 'approach',
    name: 'The project stops half way, with the lathe in pieces',
    cause: 'No milestone, boredom, life.',
    effect: 'A lathe worth its scrap, and money in a box.',
    sign: 'Four weekends without a finished task.',
    prevent:
      'Stages with a working lathe between, electrics on the bench first, a fixed date for first chips.',
    chance: [0.1, 0.2, 0.35],
    money: [0, 400, 2000],
    hours: [0, 20, 100],
    kind: 'other',
    stage: 'cross-stage',
    when: { kind: 'always' },
    levers: [
      {
        when: is('order-of-work', 'in-stages', 'bench-electrics-first'),
        by: 0.5,
        why: 'the lathe is apart for shorter times',
      },
      { when: hasSpareLathe, by: 0.7, why: 'parts can be made and the hobby goes on' },
      { when: synchroniser, by: 0.5, why: 'the lathe stays whole' },
    ],
    countedIn: 'nowhere',
  },
  {
    id: 'bed-twist',
    subsystem: 'approach',
    name: 'The bed twists or the headstock shifts',
    cause: 'The lathe was moved, bolted down again, or pulled by a bracket.',
    effect: 'It turns tapers until it is levelled and lined up again.',
    sign: 'The two-collar bar differs by more than 0.02 mm in 100 from its first reading.',
    prevent: 'Level it again and turn the two-collar bar after each stage.',
    chance: [0.15, 0.3, 0.5],
    money: [0, 10, 60],
    hours: [1, 3, 8],
    kind: 'mechanics',
    stage: 'prove',
    when: { kind: 'always' },
    levers: [
      {
        when: any(is('stand', 'stiff-stand'), is('which-lathe', 'buy-a-donor'), trainingMachine),
        by: 1.6,
        why: 'the machine is moved',
      },
      {
        when: is('condition', 'spindle-bearings-too'),
        by: 1.3,
        why: 'the spindle comes out of its bearings',
      },
      {
        when: not(is('driven-axes', 'both-slides', 'both-and-tailstock')),
        by: 0.7,
        why: 'less is taken apart',
      },
      { when: nothingDisturbed, by: 0.3, why: 'neither bed nor headstock is touched' },
    ],
  },
];
