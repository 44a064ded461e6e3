import type { Ability, Alternative, AlternativeRisk } from '../calc/core/alternative.ts';
import { all, any, is, not } from '../calc/core/condition.ts';

const hiddenWear = (
  id: string,
  money: AlternativeRisk['money'],
  hours: AlternativeRisk['hours'],
): AlternativeRisk => ({
  id,
  name: 'Wear that only shows once it is clean and under power',
  chance: [0.15, 0.3, 0.5],
  money,
  hours,
});

const curves: Ability = { can: 'yes', say: 'Curves, balls, tapers.' };
const anyPitch: Ability = { can: 'yes', say: 'Any pitch.' };
const untouched: Ability = { can: 'yes', say: 'Your lathe is left alone.' };
const worn = is('condition', 'worn-bed');

/** Another machine instead of this one, or beside it. */
export const buyAMachine: readonly Alternative[] = [
  {
    id: 'second-lathe',
    name: 'A second manual lathe',
    means: 'One lathe stays set up for the job that comes back; the other does the rest.',
    gives: 'No change-over, and a machine to make parts on if you convert one later.',
    lacks: 'The room it takes.',
    bestFor: 'Anybody about to strip the only lathe.',
    abilities: {
      threads: { can: 'partly', say: 'As its gears allow.' },
      profiles: { can: 'no', say: 'By hand and file only.' },
      batches: { can: 'partly', say: 'The set-up stays standing.' },
      handUse: { can: 'yes', say: 'Two lathes to turn on.' },
      reversible: untouched,
    },
    skill: 1,
    risks: [hiddenWear('second-lathe-wear', [50, 200, 800], [4, 12, 40])],
    costs: { once: { money: [400, 1200, 3500], hours: [4, 10, 30], weeksOut: [0, 0, 0], freighted: false } },
    saves: [0.02, 0.06, 0.15],
    firstWhen: [{ when: worn, why: 'a sound bed is the one thing that cannot be bolted on' }],
  },
  {
    id: 'turret-lathe',
    name: 'A used plain turret lathe',
    means: 'A hand-worked lathe with a turret and a lever collet, made for small parts in hundreds.',
    gives: 'Fast plain parts all day.',
    lacks: 'Curves, single parts, small weight: 300 to 1,500 kg.',
    bestFor: 'Plain parts in hundreds, where there is room.',
    abilities: {
      threads: { can: 'partly', say: 'By die head.' },
      profiles: { can: 'partly', say: 'Form tools.' },
      batches: { can: 'yes', say: 'What it was made for.' },
      handUse: { can: 'yes', say: 'Worked by hand throughout.' },
      reversible: untouched,
    },
    skill: 3,
    risks: [hiddenWear('turret-lathe-wear', [100, 400, 1500], [5, 20, 60])],
    costs: { once: { money: [500, 1500, 4000], hours: [10, 30, 80], weeksOut: [0, 0, 0], freighted: false } },
    saves: [0.7, 0.85, 1],
  },
  {
    id: 'training-machine',
    name: 'A used training CNC lathe, re-controlled',
    means:
      'A small school machine with ball screws, guards and often a turret, its control dead, given a new one.',
    gives: 'Stiffer slides, guards and a turret from the first day.',
    lacks: 'Swing, bed length; 100 to 800 kg have to be moved.',
    bestFor: 'The least money for a real CNC lathe.',
    abilities: {
      threads: anyPitch,
      profiles: curves,
      batches: { can: 'yes', say: 'Often with a turret that changes tools.' },
      handUse: { can: 'no', say: 'No handwheels on the slides.' },
      reversible: untouched,
    },
    skill: 3,
    risks: [
      hiddenWear('training-machine-wear', [100, 400, 1500], [5, 20, 60]),
      {
        id: 'training-machine-papers',
        name: 'Motors or sensors without papers have to be replaced',
        chance: [0.2, 0.35, 0.55],
        money: [80, 300, 900],
        hours: [5, 15, 40],
      },
    ],
    costs: {
      once: { money: [1200, 3200, 7000], hours: [35, 80, 180], weeksOut: [0, 0, 0], freighted: false },
    },
    saves: [0.9, 1, 1.15],
    firstWhen: [
      {
        when: is('which-lathe', 'dead-training-machine'),
        why: 'the mechanical half is there already, and your own lathe keeps working',
      },
      {
        when: all(worn, any(is('purpose', 'repeat-batches'), is('purpose', 'profiles'))),
        why: 'it brings the sound slides that this lathe lacks',
      },
    ],
  },
  {
    id: 'used-working-machine',
    name: 'A used CNC lathe that works',
    means: 'A production machine bought running, moved by riggers, on three-phase power.',
    gives: 'Production.',
    lacks: 'Small size, cheap spares and tooling.',
    bestFor: 'A small business.',
    abilities: {
      threads: anyPitch,
      profiles: curves,
      batches: { can: 'yes', say: 'All day, by itself where it has guards and a turret.' },
      handUse: { can: 'no', say: 'No handwheels on the slides.' },
      reversible: untouched,
    },
    skill: 3,
    risks: [
      {
        id: 'used-machine-repair',
        name: 'A repair of control, drives or spindle in the first year',
        chance: [0.2, 0.35, 0.55],
        money: [300, 1500, 6000],
        hours: [5, 15, 60],
      },
    ],
    costs: {
      once: { money: [4000, 11000, 30000], hours: [15, 40, 120], weeksOut: [0, 0, 0], freighted: false },
    },
    saves: [1, 1.2, 1.4],
    firstWhen: [
      {
        when: all(is('others-at-machine', 'people-i-employ'), not(worn)),
        why: 'with people at the machine its guards and papers count',
      },
    ],
  },
  {
    id: 'new-small-machine',
    name: 'A new small CNC lathe',
    means: 'A bench CNC lathe, delivered running, with somebody to ring up.',
    gives: 'Parts on the first weekend.',
    lacks: 'At the low end it is no stiffer than a converted lathe.',
    bestFor: 'People short of time.',
    abilities: {
      threads: anyPitch,
      profiles: curves,
      batches: { can: 'yes', say: 'From the first weekend.' },
      handUse: { can: 'no', say: 'No handwheels on most.' },
      reversible: untouched,
    },
    skill: 2,
    risks: [
      {
        id: 'new-machine-faults',
        name: 'Faults out of the crate that you put right yourself',
        chance: [0.15, 0.3, 0.5],
        money: [20, 150, 800],
        hours: [3, 10, 40],
      },
    ],
    costs: { once: { money: [4500, 9500, 25000], hours: [5, 15, 40], weeksOut: [0, 0, 0], freighted: true } },
    saves: [0.9, 1.05, 1.2],
  },
];
