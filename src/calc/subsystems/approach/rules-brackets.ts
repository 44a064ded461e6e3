import { all, is } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { readyKit } from './paths.ts';

const both = ['carriage-brackets', 'cross-brackets'] as const;

/** Where brackets come from, and what that does to the work. */
export const bracketRules: readonly Rule[] = [
  {
    id: 'ready-kit-shortens-the-making',
    subsystem: 'approach',
    when: readyKit,
    then: [
      {
        kind: 'scalesTask',
        tasks: ['layout-sketch', 'bracket-drawings', 'bore-bearing-seats', 'bore-pulleys', ...both],
        by: 0.4,
      },
      { kind: 'addsTask', task: 'verify-casting' },
    ],
    say: 'A kit brings most brackets and pulleys ready made; check three dimensions of your casting before you pay for it.',
  },
  {
    id: 'no-kit-for-a-training-machine',
    subsystem: 'approach',
    when: is('which-lathe', 'dead-training-machine'),
    then: [
      { kind: 'rulesOut', decision: 'buying', options: ['ready-kit'] },
      { kind: 'asksNot', decisions: ['brackets', 'old-parts'] },
    ],
    say: 'A training machine has its screws and mounts already, so there is nothing for a kit or a bracket to do.',
  },
  {
    id: 'brackets-from-a-service',
    subsystem: 'approach',
    when: is('brackets', 'ordered-to-drawing'),
    then: [{ kind: 'scalesTask', tasks: [...both], by: 0.3 }],
    say: 'Brackets from a service only need their holes finished and their edges broken.',
  },
  {
    id: 'brackets-from-a-mill',
    subsystem: 'approach',
    when: is('brackets', 'made-with-a-mill'),
    then: [{ kind: 'scalesTask', tasks: [...both], by: 0.7 }],
    say: 'On a mill faces and holes come out square at the first try.',
  },
  {
    id: 'a-mill-beside-the-lathe',
    subsystem: 'approach',
    when: all(is('brackets', 'made-on-this-lathe'), is('mill-access', 'own-mill', 'borrowed-mill')),
    then: [{ kind: 'scalesTask', tasks: [...both], by: 0.75 }],
    say: 'With a mill within reach the flat faces of the brackets take less filing.',
  },
  {
    id: 'no-drill-press',
    subsystem: 'approach',
    when: all(is('brackets', 'made-on-this-lathe'), is('mill-access', 'no-machine-tools')),
    then: [
      { kind: 'scalesTask', tasks: [...both], by: 1.3 },
      { kind: 'suggests', decision: 'brackets', options: ['ordered-to-drawing'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'Without a drill press holes wander: the plan pays for time on somebody’s machine, but ordering the brackets may suit you better.',
  },
  {
    id: 'mill-still-to-be-found',
    subsystem: 'approach',
    when: all(is('brackets', 'made-with-a-mill'), is('mill-access', 'drill-press-only', 'no-machine-tools')),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'You chose a mill but have none within reach: the plan pays for some hours on one, and you still have to find it.',
  },
  {
    id: 'welded-brackets-want-machining',
    subsystem: 'approach',
    when: is('brackets', 'welded'),
    then: [
      { kind: 'scalesTask', tasks: [...both], by: 1.4 },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Welding pulls plate out of shape, so every face that carries something is machined afterwards.',
  },
  {
    id: 'printed-brackets-are-replaced',
    subsystem: 'approach',
    when: is('brackets', 'printed-first'),
    then: [
      {
        kind: 'gate',
        gate: 'metal brackets',
        of: ['replace-printed-brackets'],
        before: ['turning-test'],
      },
      { kind: 'warns', level: 'look' },
    ],
    say: 'Printed brackets creep under load, so metal ones take their place before the first cut in steel.',
  },
  {
    id: 'used-parts-are-tested',
    subsystem: 'approach',
    when: is('buying', 'mostly-used'),
    then: [{ kind: 'warns', level: 'note' }],
    say: 'Test every used motor, drive and screw on arrival; the plan has hours for it and counts a saving that may come out as nothing.',
  },
];
