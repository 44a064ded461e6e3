import { all, is } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';

/** What the operator touches and how programs are made. */
export const handRules: readonly Rule[] = [
  {
    id: 'standalone-brings-its-panel',
    subsystem: 'control',
    when: is('control', 'standalone-control'),
    then: [{ kind: 'asksNot', decisions: ['operator-panel'] }],
    say: 'A ready-made lathe control is its own operator panel.',
  },
  {
    id: 'no-hand-use-needs-a-pendant',
    subsystem: 'control',
    when: is('hand-use', 'no-hand-use'),
    then: [{ kind: 'rulesOut', decision: 'operator-panel', options: ['keyboard-and-mouse'] }],
    say: 'With the handwheels gone, something better than a keyboard has to move the slides.',
  },
  {
    id: 'panel-wheels-take-two-counters',
    subsystem: 'control',
    when: is('operator-panel', 'handwheel-panel'),
    then: [
      { kind: 'assumes', name: 'counters-needed', value: 2 },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Two electronic handwheels take two pulse counters and about ten inputs: see that the control has them to spare.',
  },
  {
    id: 'pendant-is-bought-for-the-panel',
    subsystem: 'control',
    when: all(
      is('operator-panel', 'pendant-and-buttons'),
      is('hand-use', 'no-hand-use', 'hand-cranks', 'fully-reversible'),
    ),
    then: [{ kind: 'assumes', name: 'counters-needed', value: 1 }],
    say: 'The pendant of the panel is bought although no handwheel was asked for, and takes one counter.',
  },
  {
    id: 'panel-wheels-replace-the-pendant',
    subsystem: 'control',
    when: all(is('operator-panel', 'handwheel-panel'), is('hand-use', 'electronic-handwheels')),
    then: [{ kind: 'assumes', name: 'hand-wheels', value: 'on the panel' }],
    say: 'The wheels on the panel are the electronic handwheels, so no pendant is bought as well.',
  },
  {
    id: 'small-boards-have-no-forms',
    subsystem: 'control',
    when: is('control', 'small-board'),
    then: [{ kind: 'rulesOut', decision: 'program-making', options: ['fill-in-forms'] }],
    say: 'Small boards seldom have fill-in lathe forms of their own.',
  },
];
