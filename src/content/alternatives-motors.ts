import type { Alternative } from '../calc/core/alternative.ts';
import { all, is, not, only } from '../calc/core/condition.ts';
import { pathOf, referencePaths } from './reference-paths.ts';

const byId = (id: string) => referencePaths.find((each) => each.id === id)!.path;

/** A motor on the lead screw and nothing else: no programs, no second motor. */
const synchroniser = pathOf({
  purpose: ['one-off-repairs', 'thread-cutting'],
  'thread-kinds': ['metric-threads', 'inch-threads'],
  'hand-use': 'fully-reversible',
  'driven-axes': 'carriage-only',
  'carriage-drive': 'original-lead-screw',
  'carriage-coupling': 'carriage-direct',
  apron: 'keep-apron',
  'old-feeds': 'disable-old-feeds',
  compound: 'keep-compound',
  'tool-holding': 'four-way-block',
  control: 'thread-synchroniser',
  'spindle-motor': 'keep-single-phase',
  'speed-command': 'speed-by-knob',
  'spindle-stop': 'coast-to-stop',
  'home-limits': 'no-homing',
  housing: 'plastic-box',
});

const wantsThreads = all(is('purpose', 'thread-cutting'), not(is('condition', 'worn-bed')));

/** What puts motors on the lathe, worked out on the owner's lathe with the answers of a typical path. */
export const motorsOnIt: readonly Alternative[] = [
  {
    id: 'thread-synchroniser',
    name: 'Thread synchroniser on the lead screw',
    means:
      'A motor turns the lead screw in step with a sensor on the spindle. The rest of the lathe stays as it is.',
    gives: 'Any pitch, any feed, a stop at the shoulder; all hand use stays.',
    lacks: 'Curves, tool tables, a driven cross slide.',
    bestFor: 'Threads, single parts, people who like turning.',
    abilities: {
      threads: { can: 'yes', say: 'Any pitch from a key press.' },
      profiles: { can: 'no', say: 'The cross slide is moved by hand.' },
      batches: { can: 'partly', say: 'Lengths repeat, diameters by hand.' },
      handUse: { can: 'yes', say: 'Half-nut and handwheels stay.' },
      reversible: { can: 'yes', say: 'Bolts off in an evening.' },
    },
    skill: 3,
    risks: [],
    costs: { path: synchroniser },
    firstWhen: [
      {
        when: all(wantsThreads, only('purpose', 'thread-cutting', 'one-off-repairs')),
        why: 'threads are the wish, and only the carriage has to follow the spindle',
      },
    ],
  },
  {
    id: 'two-axis-synchroniser',
    name: 'Synchroniser on both slides, cranks kept',
    means: 'Motors on the lead screw and the cross slide, hand cranks on them, no programs to write.',
    gives: 'Tapers, repeated passes, soft stops; on some controls balls.',
    lacks: 'Programs, tool changes in a cycle.',
    bestFor: 'Half way, or the first stages of a conversion.',
    abilities: {
      threads: { can: 'yes', say: 'Any pitch, passes by themselves.' },
      profiles: { can: 'partly', say: 'Tapers; balls on some controls.' },
      batches: { can: 'partly', say: 'Cycles repeat, tools by hand.' },
      handUse: { can: 'yes', say: 'Cranks, with the drives off.' },
      reversible: { can: 'partly', say: 'Bolts off; brackets leave holes.' },
    },
    skill: 3,
    risks: [],
    costs: { path: byId('thread-synchroniser-with-cross-feed') },
  },
  {
    id: 'frugal-conversion',
    name: 'A frugal full conversion',
    means: 'Both slides by program with open-loop steppers, an old PC and the motor the lathe came with.',
    gives: 'What two driven slides do, at the stiffness of a small machine.',
    lacks: 'Feel, speed, a warranty.',
    bestFor: 'Learners, small batches.',
    abilities: {
      threads: { can: 'partly', say: 'As steady as the spindle motor is.' },
      profiles: { can: 'yes', say: 'Curves, balls, tapers.' },
      batches: { can: 'yes', say: 'One program, tools changed by hand.' },
      handUse: { can: 'partly', say: 'By electronic handwheels.' },
      reversible: { can: 'no', say: 'Castings are drilled.' },
    },
    skill: 4,
    risks: [],
    costs: { path: byId('frugal') },
  },
  {
    id: 'usual-conversion',
    name: 'A usual full conversion',
    means:
      'Both slides by program, closed-loop steppers, a spindle drive with speed by program, screened and guarded.',
    gives: 'Speed by program, true threads, lost motion noticed.',
    lacks: 'A warranty, and the months it takes.',
    bestFor: 'Work that repeats, and people who like building.',
    abilities: {
      threads: { can: 'yes', say: 'Any pitch, any start.' },
      profiles: { can: 'yes', say: 'Curves, balls, tapers.' },
      batches: { can: 'yes', say: 'One program, repeatable tools.' },
      handUse: { can: 'partly', say: 'By electronic handwheels.' },
      reversible: { can: 'no', say: 'Castings are drilled.' },
    },
    skill: 4,
    risks: [],
    costs: { path: byId('reference') },
  },
];
