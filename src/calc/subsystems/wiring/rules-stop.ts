import { all, always, is } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { knobStaysInHand } from '../spindle/drive.ts';
import { programStarts, servoAxes } from './wired.ts';

/** What has to stop, and how. */
export const stopRules: readonly Rule[] = [
  {
    id: 'software-stop-not-accepted',
    subsystem: 'wiring',
    when: always,
    then: [{ kind: 'rulesOut', decision: 'stop-circuit', options: ['tells-computer-only'] }],
    say: 'A button that only tells the computer does nothing when the computer hangs, so it is not a stop circuit.',
  },
  {
    id: 'no-watchdog-not-accepted',
    subsystem: 'wiring',
    when: always,
    then: [{ kind: 'rulesOut', decision: 'watchdog', options: ['no-watchdog'] }],
    say: 'Without a watchdog the spindle and drives go on after the computer has hung.',
  },
  {
    id: 'servos-need-a-cutting-stop',
    subsystem: 'wiring',
    when: is('axis-motor', 'mains-servo'),
    then: [
      { kind: 'requires', decision: 'stop-circuit', options: ['cuts-power', 'cuts-power-watched'] },
      { kind: 'addsCheck', check: 'carriage-torque-limit' },
      { kind: 'addsTask', task: 'servo-first-enable' },
    ],
    say: 'Servos can bend the machine and run away with a reversed encoder, so the stop has to cut their power.',
  },
  {
    id: 'power-chuck-needs-watched-stop',
    subsystem: 'wiring',
    when: is('work-holding', 'power-chuck'),
    then: [{ kind: 'requires', decision: 'stop-circuit', options: ['cuts-power-watched'] }],
    say: 'A chuck closed by air lets go when air fails, so its pressure switch belongs in a watched stop circuit.',
  },
  {
    id: 'servo-stop-wants-timer',
    subsystem: 'wiring',
    when: all(is('stop-circuit', 'cuts-power'), servoAxes),
    then: [
      { kind: 'suggests', decision: 'spindle-stop', options: ['ramp-then-cut', 'drive-safe-off'] },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Servos stop better under power: the plan buys a timer that lets them stop first, or use the safe-off input of the drive.',
  },
  {
    id: 'spindle-drive-wants-ramp-first',
    subsystem: 'wiring',
    when: all(
      is('stop-circuit', 'cuts-power', 'cuts-power-watched'),
      is('spindle-motor', 'three-phase-drive', 'doubler-drive', 'servo-spindle', 'brushless-kit'),
    ),
    then: [{ kind: 'suggests', decision: 'spindle-stop', options: ['ramp-then-cut', 'drive-safe-off'] }],
    say: 'Cut the supply of a drive and the chuck coasts, so order a ramp first and let a timer cut the power after it.',
  },
  {
    id: 'plain-motor-cannot-ramp',
    subsystem: 'wiring',
    when: is('spindle-motor', 'keep-single-phase'),
    then: [{ kind: 'rulesOut', decision: 'spindle-stop', options: ['ramp-then-cut', 'drive-safe-off'] }],
    say: 'A single-phase motor on a starter has no ramp and no safe-off input: it coasts, or a brake stops it.',
  },
  {
    id: 'knob-motor-has-no-safe-off',
    subsystem: 'wiring',
    when: is('spindle-motor', 'keep-speed-knob'),
    then: [{ kind: 'rulesOut', decision: 'spindle-stop', options: ['drive-safe-off'] }],
    say: 'The board behind a speed knob has no safe-off input.',
  },
  {
    id: 'knob-in-hand-cannot-ramp',
    subsystem: 'wiring',
    when: knobStaysInHand,
    then: [{ kind: 'rulesOut', decision: 'spindle-stop', options: ['ramp-then-cut'] }],
    say: 'Nothing is wired into the speed board of a hand-started lathe, so nothing can order a ramp: it coasts.',
  },
  {
    id: 'brake-and-screwed-chuck',
    subsystem: 'wiring',
    when: all(is('spindle-nose', 'screwed-nose', 'nose-not-known'), is('spindle-stop', 'mechanical-brake')),
    then: [{ kind: 'warns', level: 'stop' }],
    say: 'A brake that grabs can unscrew a chuck: on a screwed nose fit something that holds the chuck, and set five seconds or more.',
  },
  {
    id: 'coasting-chuck-warning',
    subsystem: 'wiring',
    when: is('spindle-stop', 'coast-to-stop'),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'After the button the chuck turns on without a sound; keep the guard shut until it stands.',
  },
  {
    id: 'program-start-wants-guard-switch',
    subsystem: 'wiring',
    when: all(is('stop-circuit', 'cuts-power', 'cuts-power-watched'), programStarts),
    then: [{ kind: 'suggests', decision: 'chuck-guard', options: ['shield-with-switch'] }],
    say: 'A lathe that starts by program wants a chuck guard with a switch in the spindle circuit.',
  },
  {
    id: 'no-guard-warning',
    subsystem: 'wiring',
    when: is('chuck-guard', 'no-guard', 'hinged-shield'),
    then: [{ kind: 'warns', level: 'stop' }],
    say: 'Nothing prevents a start with a key or a hand at the chuck; that is the worst accident of these machines.',
  },
  {
    id: 'guard-before-spindle-turns',
    subsystem: 'wiring',
    when: is('chuck-guard', 'hinged-shield', 'shield-with-switch'),
    then: [{ kind: 'gate', gate: 'guard on', of: ['fit-chuck-guard'], before: ['swap-spindle-motor'] }],
    say: 'The guard is on before the new spindle motor first turns.',
  },
];
