import type { Ability, Alternative } from '../calc/core/alternative.ts';
import { any, is } from '../calc/core/condition.ts';

const anyPitch: Ability = { can: 'yes', say: 'Any pitch.' };
const curves: Ability = { can: 'yes', say: 'Curves, balls, tapers.' };
const untouched: Ability = { can: 'yes', say: 'Your lathe is left alone.' };

/** Somebody else's machine. */
export const somebodyElse: readonly Alternative[] = [
  {
    id: 'send-out',
    name: 'Send the parts out',
    means: 'A drawing goes to a shop, parts come back in a box.',
    gives: 'No machine, no room, no learning.',
    lacks: 'Trying things out, keeping them to yourself, having them tomorrow.',
    bestFor: 'Under about thirty odd parts a year, or more money than time.',
    abilities: {
      threads: anyPitch,
      profiles: curves,
      batches: { can: 'yes', say: 'Paid by the piece.' },
      handUse: { can: 'yes', say: 'Your lathe is left alone.' },
      reversible: untouched,
    },
    skill: 1,
    risks: [
      {
        id: 'outside-parts-wrong',
        name: 'A batch comes back wrong and the drawing was yours',
        chance: [0.1, 0.2, 0.35],
        money: [50, 150, 500],
        hours: [1, 3, 8],
      },
    ],
    costs: {
      once: { money: [0, 0, 0], hours: [0, 1, 4], weeksOut: [0, 0, 0], freighted: false },
      use: {
        perBatch: [30, 90, 250],
        hoursPerBatch: [0.5, 1, 3],
        perPiece: [8, 35, 150],
        perPieceInBatch: [4, 9, 25],
      },
    },
    saves: [1, 1, 1],
    firstWhen: [
      {
        when: any(is('purpose', 'repeat-batches'), is('purpose', 'profiles')),
        why: 'its price shows what your own hours are worth',
      },
    ],
  },
  {
    id: 'shared-workshop',
    name: 'A club or shared workshop',
    means: 'A fee a month, a course, and a machine that somebody else keeps running.',
    gives: 'A real machine, and people who know it.',
    lacks: 'It is not there at midnight.',
    bestFor: 'Trying before deciding.',
    abilities: {
      threads: anyPitch,
      profiles: curves,
      batches: { can: 'partly', say: 'In the hours you are given.' },
      handUse: { can: 'yes', say: 'Your lathe is left alone.' },
      reversible: untouched,
    },
    skill: 1,
    risks: [
      {
        id: 'machine-taken',
        name: 'The machine is taken or down when you need it',
        chance: [0.2, 0.35, 0.55],
        money: [0, 30, 100],
        hours: [2, 6, 20],
      },
    ],
    costs: {
      once: { money: [0, 60, 200], hours: [4, 8, 16], weeksOut: [0, 0, 0], freighted: false },
      use: { perMonth: [30, 80, 200] },
    },
    saves: [0.4, 0.7, 0.9],
    firstWhen: [
      { when: is('purpose', 'learning'), why: 'a few evenings at a real machine show whether you want one' },
    ],
  },
];
