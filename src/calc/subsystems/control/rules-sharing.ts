import { all, is } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { twoMachines } from './kinds.ts';

/** One cabinet and control for two machines, one at a time. */
export const sharingRules: readonly Rule[] = [
  {
    id: 'only-one-machine-live',
    subsystem: 'control',
    when: twoMachines,
    then: [
      { kind: 'gate', gate: 'changeover proved', of: ['changeover-wiring'], before: ['prove-stop-circuit'] },
      { kind: 'warns', level: 'stop' },
    ],
    say: 'Only one of two machines may be live: an interlock by wire, not a habit, and both stop buttons stop whichever runs.',
  },
  {
    id: 'settings-and-heat-of-two-machines',
    subsystem: 'control',
    when: twoMachines,
    then: [
      { kind: 'addsCheck', check: 'cabinet-heat' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'Each machine needs its own settings, chosen by its plug, and a cabinet that serves two runs longer and hotter: size the fan for the larger one.',
  },
  {
    id: 'built-in-drives-share-little',
    subsystem: 'control',
    when: all(twoMachines, is('drives', 'built-in-drives')),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'With drives inside the motors the second machine needs its own drives too, so sharing saves only control and supply.',
  },
  {
    id: 'servo-drives-learn-one-motor',
    subsystem: 'control',
    when: all(twoMachines, is('axis-motor', 'mains-servo', 'used-dc-servo')),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'A servo drive is set for one motor: both machines need the same motors, or the tuning must change with the plug.',
  },
];
