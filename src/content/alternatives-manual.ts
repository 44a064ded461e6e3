import type { Ability, Alternative } from '../calc/core/alternative.ts';
import { all, any, is, not, only } from '../calc/core/condition.ts';

const asBefore: Ability = { can: 'yes', say: 'All of it, as now.' };
const boltsOff: Ability = { can: 'yes', say: 'Bolts off again.' };
const byGears: Ability = { can: 'partly', say: 'What the change gears give.' };
const noCurves: Ability = { can: 'no', say: 'By hand and file only.' };

const mostlySingle = any(
  only('purpose', 'one-off-repairs'),
  only('purpose', 'one-off-repairs', 'thread-cutting'),
);
const onlyThreads = all(
  is('purpose', 'thread-cutting'),
  only('purpose', 'thread-cutting', 'one-off-repairs'),
);
const makesBatches = is('purpose', 'repeat-batches');
const worn = is('condition', 'worn-bed');

/** What keeps the lathe a hand lathe and makes it a better one. */
export const besideTheLathe: readonly Alternative[] = [
  {
    id: 'change-gears',
    name: 'Change gears for another pitch',
    means:
      'The gears between spindle and lead screw that give metric and inch threads, the 127-tooth one among them.',
    gives: 'Any common pitch, exact, on the lathe as it is.',
    lacks: 'Ten minutes of dirty hands for each change of pitch.',
    bestFor: 'A thread now and then.',
    abilities: {
      threads: { can: 'yes', say: 'Common metric and inch pitches, one set of gears for each.' },
      profiles: noCurves,
      batches: { can: 'no', say: 'Nothing changes.' },
      handUse: asBefore,
      reversible: boltsOff,
    },
    skill: 2,
    risks: [
      {
        id: 'gear-does-not-mesh',
        name: 'A gear has another tooth size or bore than the lathe',
        chance: [0.08, 0.15, 0.3],
        money: [5, 20, 60],
        hours: [1, 2, 6],
      },
    ],
    costs: { once: { money: [30, 80, 200], hours: [1, 4, 12], weeksOut: [0, 0, 0], freighted: true } },
    firstWhen: [
      { when: all(onlyThreads, not(worn)), why: 'threads are the wish, and this gives them for the least' },
    ],
  },
  {
    id: 'dies',
    name: 'Dies with a holder',
    means: 'Dies in a sliding holder on the tailstock, or a die head that opens by itself.',
    gives: 'Outside threads up to about 12 mm in seconds.',
    lacks: 'Odd pitches, large threads, threads that must run true to the bore.',
    bestFor: 'Small common threads.',
    abilities: {
      threads: { can: 'partly', say: 'Small outside threads of common pitch.' },
      profiles: noCurves,
      batches: { can: 'partly', say: 'The thread itself takes seconds.' },
      handUse: asBefore,
      reversible: boltsOff,
    },
    skill: 1,
    risks: [
      {
        id: 'die-cuts-crooked',
        name: 'Threads come out crooked until the holder is lined up',
        chance: [0.1, 0.2, 0.35],
        money: [0, 15, 50],
        hours: [0.5, 2, 5],
      },
    ],
    costs: { once: { money: [40, 150, 450], hours: [1, 2, 5], weeksOut: [0, 0, 0], freighted: true } },
    firstWhen: [
      {
        when: all(onlyThreads, only('thread-kinds', 'metric-threads', 'no-threads'), not(worn)),
        why: 'common threads up to 12 mm need no lead screw',
      },
    ],
  },
  {
    id: 'work-holding-and-stops',
    name: 'Stay manual: stops, sharp tools, quick-change post',
    means: 'Money goes into a tool post, bed and cross-slide stops, good inserts and collets.',
    gives: 'Most of the time that single parts take; stops repeat to about 0.03 mm.',
    lacks: 'Curves, and anything unattended.',
    bestFor: 'Fewer than five jobs a year that repeat.',
    abilities: {
      threads: byGears,
      profiles: noCurves,
      batches: { can: 'partly', say: 'Lengths and diameters by stop; every piece by hand.' },
      handUse: asBefore,
      reversible: boltsOff,
    },
    skill: 1,
    risks: [
      {
        id: 'post-does-not-fit',
        name: 'Tool post is too high or its bolt does not fit',
        chance: [0.05, 0.12, 0.25],
        money: [5, 25, 80],
        hours: [1, 2, 5],
      },
    ],
    costs: { once: { money: [60, 220, 500], hours: [2, 6, 15], weeksOut: [0, 0, 0], freighted: true } },
    saves: [0.1, 0.25, 0.4],
    firstWhen: [
      { when: mostlySingle, why: 'single parts gain more from stops and sharp tools than from programs' },
      { when: worn, why: 'it gets the best out of a worn lathe, and moves on to the next one' },
    ],
  },
  {
    id: 'readout',
    name: 'Digital readout on both slides',
    means: 'Scales on carriage and cross slide with a display.',
    gives: 'No counting of turns and no guessing at play: diameters to 0.01 mm.',
    lacks: 'Power feed, threads, repeats without a hand on the wheel.',
    bestFor: 'Everybody who measures more than they turn.',
    abilities: {
      threads: byGears,
      profiles: noCurves,
      batches: { can: 'partly', say: 'Fewer stops to measure.' },
      handUse: asBefore,
      reversible: { can: 'yes', say: 'A few tapped holes stay.' },
    },
    skill: 2,
    risks: [
      {
        id: 'scale-in-the-way',
        name: 'The scale on the cross slide takes away the lock or some travel',
        chance: [0.1, 0.2, 0.35],
        money: [10, 40, 120],
        hours: [1, 3, 8],
      },
    ],
    costs: { once: { money: [110, 230, 650], hours: [4, 8, 16], weeksOut: [0, 0.3, 1], freighted: true } },
    saves: [0.05, 0.12, 0.25],
    firstWhen: [
      {
        when: only('purpose', 'one-off-repairs'),
        why: 'counting dials and measuring is what single parts lose time on',
      },
      {
        when: all(is('purpose', 'one-off-repairs'), not(makesBatches), not(is('purpose', 'learning'))),
        why: 'it ends the guessing at play on every part',
      },
    ],
  },
  {
    id: 'power-feed',
    name: 'Powered feed for carriage or cross slide',
    means: 'A small geared motor with a clutch on one slide.',
    gives: 'An even finish and less winding.',
    lacks: 'Accuracy and threads.',
    bestFor: 'Facing and long cuts.',
    abilities: {
      threads: byGears,
      profiles: noCurves,
      batches: { can: 'partly', say: 'The hand is free, the eye is not.' },
      handUse: asBefore,
      reversible: boltsOff,
    },
    skill: 3,
    risks: [
      {
        id: 'feed-runs-into-the-chuck',
        name: 'No stop, and the slide is fed into chuck or shoulder',
        chance: [0.08, 0.15, 0.3],
        money: [10, 40, 150],
        hours: [1, 3, 10],
      },
    ],
    costs: { once: { money: [40, 120, 300], hours: [4, 10, 24], weeksOut: [0, 0.3, 1], freighted: true } },
    saves: [0.05, 0.1, 0.2],
  },
];
