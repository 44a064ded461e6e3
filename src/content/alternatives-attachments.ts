import type { Ability, Alternative } from '../calc/core/alternative.ts';
import { all, is, not, only } from '../calc/core/condition.ts';

const asBefore: Ability = { can: 'yes', say: 'All of it, as now.' };
const boltsOff: Ability = { can: 'yes', say: 'Bolts off again.' };
const byGears: Ability = { can: 'partly', say: 'What the change gears give.' };

const makesBatches = is('purpose', 'repeat-batches');
const worn = is('condition', 'worn-bed');

/** Tools that make a hand lathe quicker at one kind of part. */
export const attachments: readonly Alternative[] = [
  {
    id: 'ball-and-taper',
    name: 'Ball-turning or taper attachment',
    means: 'A swinging tool for balls, or a guide bar for tapers.',
    gives: 'Clean balls or tapers by hand.',
    lacks: 'Any other shape.',
    bestFor: 'Handles, ball knobs, one kind of taper.',
    abilities: {
      threads: byGears,
      profiles: { can: 'partly', say: 'Balls or tapers, one attachment for each.' },
      batches: { can: 'partly', say: 'Shapes repeat by stop.' },
      handUse: asBefore,
      reversible: boltsOff,
    },
    skill: 2,
    risks: [
      {
        id: 'attachment-too-tall',
        name: 'It does not fit over the cross slide of a small lathe',
        chance: [0.08, 0.15, 0.3],
        money: [10, 40, 120],
        hours: [1, 4, 10],
      },
    ],
    costs: { once: { money: [60, 180, 500], hours: [2, 6, 16], weeksOut: [0, 0, 0], freighted: true } },
    firstWhen: [
      {
        when: only('purpose', 'profiles', 'one-off-repairs'),
        why: 'a few balls or tapers a year need no program',
      },
    ],
  },
  {
    id: 'tailstock-turret',
    name: 'Tailstock turret, lever collet and stops',
    means:
      'Six tools on the tailstock, a collet that opens with a lever, stops for every length: the way small turned parts were always made by hand.',
    gives:
      'About three quarters of the time that a conversion saves on parts that are drilled, turned and parted off.',
    lacks: 'Curves, tapers, threads larger than a die.',
    bestFor: 'Batches of ten to two hundred plain parts.',
    abilities: {
      threads: { can: 'partly', say: 'By die from the turret.' },
      profiles: { can: 'partly', say: 'Form tools, one for each shape.' },
      batches: { can: 'yes', say: 'A piece every minute or two, at the lathe all the time.' },
      handUse: asBefore,
      reversible: boltsOff,
    },
    skill: 2,
    risks: [
      {
        id: 'turret-off-centre',
        name: 'Turret stations do not line up with the spindle',
        chance: [0.1, 0.2, 0.35],
        money: [10, 50, 150],
        hours: [2, 5, 14],
      },
    ],
    costs: { once: { money: [250, 600, 1300], hours: [10, 25, 60], weeksOut: [0, 0.3, 1], freighted: true } },
    saves: [0.6, 0.75, 0.85],
    firstWhen: [
      {
        when: all(makesBatches, not(worn)),
        why: 'plain parts in batches gain most of the time from it, for far less',
      },
    ],
  },
];
