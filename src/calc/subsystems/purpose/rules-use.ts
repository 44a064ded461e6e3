import { all, is } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { hasSpareLathe } from './paths.ts';

/** What purpose and lathe ask of hand use, of the driven slides, and of the order of work. */
export const useRules: readonly Rule[] = [
  {
    id: 'practice-shortens-hours',
    subsystem: 'purpose',
    when: is('experience', 'built-machines-before', 'converted-before'),
    then: [{ kind: 'warns', level: 'note' }],
    say: 'You have done such work before, so every task is planned with fewer hours than for a first time. What goes wrong is planned as for everybody.',
  },
  {
    id: 'cutting-threads-names-a-kind',
    subsystem: 'purpose',
    when: is('purpose', 'thread-cutting'),
    then: [{ kind: 'rulesOut', decision: 'thread-kinds', options: ['no-threads'] }],
    say: 'You want it for threads, so at least one kind of thread belongs on the list.',
  },
  {
    id: 'one-offs-need-hand-use',
    subsystem: 'purpose',
    when: all(is('purpose', 'one-off-repairs'), is('hand-use', 'no-hand-use')),
    then: [
      { kind: 'suggests', decision: 'hand-use', options: ['electronic-handwheels', 'hand-cranks'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'Single parts are made faster by hand than by program, and you chose a machine without hand use.',
  },
  {
    id: 'hand-wheels-take-a-counter',
    subsystem: 'purpose',
    when: is('hand-use', 'electronic-handwheels'),
    then: [{ kind: 'assumes', name: 'counters-needed', value: 1 }],
    say: 'An electronic handwheel takes one spare pulse counter of the control.',
  },
  {
    id: 'no-hand-use-is-less-to-set-up',
    subsystem: 'purpose',
    when: is('hand-use', 'no-hand-use'),
    then: [
      { kind: 'scalesTask', tasks: ['configure-control'], by: 0.8 },
      { kind: 'scalesTask', tasks: ['wiring-schematic'], by: 0.9 },
    ],
    say: 'Without handwheels there is less to draw, to wire and to set up.',
  },
  {
    id: 'threads-need-a-driven-carriage',
    subsystem: 'purpose',
    when: is('purpose', 'thread-cutting'),
    then: [{ kind: 'rulesOut', decision: 'driven-axes', options: ['cross-slide-only'] }],
    say: 'A thread is cut by the carriage following the spindle, so the carriage needs the motor.',
  },
  {
    id: 'curves-need-both-slides',
    subsystem: 'purpose',
    when: all(is('purpose', 'profiles'), is('driven-axes', 'carriage-only', 'cross-slide-only')),
    then: [
      { kind: 'suggests', decision: 'driven-axes', options: ['both-slides'] },
      { kind: 'warns', level: 'stop' },
    ],
    say: 'Curves and tapers need both slides to move together, and only one of yours gets a motor.',
  },
  {
    id: 'batches-want-both-slides',
    subsystem: 'purpose',
    when: all(is('purpose', 'repeat-batches'), is('driven-axes', 'carriage-only', 'cross-slide-only')),
    then: [{ kind: 'warns', level: 'note' }],
    say: 'With one driven slide a batch still needs your hand on the other for every cut.',
  },
  {
    id: 'spare-lathe-makes-parts-any-day',
    subsystem: 'purpose',
    when: hasSpareLathe,
    then: [
      {
        kind: 'scalesTask',
        tasks: [
          'bore-bearing-seats',
          'bore-pulleys',
          'turn-spacers-and-registers',
          'carriage-brackets',
          'cross-brackets',
          'make-riser',
          'make-sensor-bracket',
          'spindle-plate-and-pulley',
        ],
        by: 0.7,
      },
    ],
    say: 'With another lathe running, parts are turned to the machine in front of you instead of being guessed in advance.',
  },
  {
    id: 'sound-spindle-before-boring',
    subsystem: 'purpose',
    when: is('condition', 'spindle-bearings-too'),
    then: [
      {
        kind: 'gate',
        gate: 'sound spindle',
        of: ['change-spindle-bearings'],
        before: [
          'bore-bearing-seats',
          'bore-pulleys',
          'turn-spacers-and-registers',
          'make-riser',
          'make-sensor-bracket',
          'spindle-plate-and-pulley',
          'spare-of-each-carriage',
        ],
      },
    ],
    say: 'The spindle is put right first: what is bored on loose bearings is not round.',
  },
];
