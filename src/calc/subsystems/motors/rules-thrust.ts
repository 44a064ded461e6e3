import { all, any, atLeast, is, known, not } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { crossDriven, runsPrograms } from './driven.ts';

/** What each kind and size of motor asks for. */
export const thrustRules: readonly Rule[] = [
  {
    id: 'alarms-stop-the-program',
    subsystem: 'motors',
    when: is('axis-motor', 'closed-loop-stepper'),
    then: [
      { kind: 'assumes', name: 'alarm-inputs', value: 1 },
      { kind: 'addsTask', task: 'alarm-test' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Wire the motor alarms in one line, closed while all is well, to an input that stops the movement; otherwise nothing notices a slip.',
  },
  {
    id: 'servo-without-reduction',
    subsystem: 'motors',
    when: all(is('axis-motor', 'mains-servo'), is('carriage-coupling', 'carriage-direct')),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'Coupled straight to the screw a servo gives little push for its size; a belt of 2:1 or 3:1 uses it better.',
  },
  {
    id: 'plain-steppers-slip-silently',
    subsystem: 'motors',
    when: all(is('axis-motor', 'open-loop-stepper'), runsPrograms),
    then: [
      { kind: 'assumes', name: 'axis-margin', value: 2 },
      { kind: 'addsTask', task: 'rehome-each-part' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Plain steppers lose steps without telling: plan twice the push you need and start each part from the home switches.',
  },
  {
    id: 'plain-steppers-in-hand-work',
    subsystem: 'motors',
    when: all(is('axis-motor', 'open-loop-stepper'), not(runsPrograms)),
    then: [
      { kind: 'assumes', name: 'axis-margin', value: 2 },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Plain steppers lose steps without telling: plan twice the push you need, and pick a thread up anew after a growl.',
  },
  {
    id: 'drill-limited-by-plain-stepper',
    subsystem: 'motors',
    when: all(is('axis-motor', 'open-loop-stepper'), is('holes', 'drill-in-tool-post')),
    then: [
      { kind: 'addsCheck', check: 'drilling-thrust' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'With plain steppers the largest drill in the tool post is set by the push of the carriage: too large a drill slips and nobody knows.',
  },
  {
    id: 'large-motor-on-the-saddle',
    subsystem: 'motors',
    when: all(is('motor-size', 'face-86-both'), crossDriven),
    then: [{ kind: 'warns', level: 'note' }],
    say: 'An 86 mm motor hangs two to four kilograms on the saddle, at the end of a bracket.',
  },
  {
    id: 'one-motor-has-one-size',
    subsystem: 'motors',
    when: is('driven-axes', 'carriage-only', 'cross-slide-only'),
    then: [{ kind: 'rulesOut', decision: 'motor-size', options: ['face-57-and-86'] }],
    say: 'Only one slide gets a motor, so there is one size to choose.',
  },
  {
    id: 'small-motors-on-a-heavy-carriage',
    subsystem: 'motors',
    when: all(
      is('motor-size', 'face-57-both'),
      any(all(known('saddle-mass'), atLeast('saddle-mass', 60)), all(known('swing'), atLeast('swing', 0.3))),
    ),
    then: [
      { kind: 'suggests', decision: 'motor-size', options: ['face-57-and-86'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A carriage of this weight leaves a 57 mm motor little to spare for drilling.',
  },
  {
    id: 'servos-are-limited-and-proved',
    subsystem: 'motors',
    when: is('axis-motor', 'mains-servo', 'used-dc-servo'),
    then: [
      {
        kind: 'gate',
        gate: 'first enable with the belt off',
        of: ['servo-first-enable'],
        before: ['first-powered-carriage', 'fit-cross-motor'],
      },
      { kind: 'addsCheck', check: 'carriage-torque-limit' },
      { kind: 'warns', level: 'stop' },
    ],
    say: 'A servo can bend the machine, and run away if its encoder is reversed: torque limit set, first enable with the belt off and a hand on the stop.',
  },
];
