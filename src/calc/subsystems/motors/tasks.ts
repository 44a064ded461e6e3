import { all, any, is } from '../../core/condition.ts';
import type { Task } from '../../core/task.ts';
import { crossDriven, oneSlide, runsPrograms, tailstockDriven } from './driven.ts';

const canRunAway = is('axis-motor', 'mains-servo', 'used-dc-servo');
const hasAlarm = any(canRunAway, is('axis-motor', 'closed-loop-stepper'), tailstockDriven);
const oneMotor = (by: number) => ({ when: oneSlide, by, why: 'one motor' });

export const tasks: readonly Task[] = [
  {
    id: 'heavy-motor-mounts',
    subsystem: 'motors',
    stage: 'make-first',
    name: 'Make the plates for the large motors stiffer',
    hours: [0, 1, 3],
    when: is('motor-size', 'face-57-and-86', 'face-86-both'),
    after: ['bracket-drawings', 'incoming-inspection'],
    tools: 'Drill press or mill, boring head or lathe for the 73 mm register',
    lathe: 'cutting',
    undo: 'can-be-undone',
    test: 'Register fits the motor by hand; the plate moves under 0.02 mm when 100 N are hung on the shaft.',
    safety:
      'Clamp the part before you drill it: a drill grabs as it breaks through. Eyes covered, iron dust to the vacuum, no gloves.',
    extra: [
      {
        id: 'extra-heavy-motor-mounts-cross',
        when: all(is('motor-size', 'face-86-both'), crossDriven),
        hours: [2, 3, 5],
        why: 'the cross slide needs a heavy bracket too, checked for room all round',
      },
    ],
  },
  {
    id: 'build-transformer-supply',
    subsystem: 'motors',
    stage: 'bench-electrics',
    name: 'Build the transformer supply and prove its bleed resistor',
    hours: [3, 6, 10],
    when: is('motor-supply', 'transformer-supply'),
    after: ['order-short-lead', 'incoming-inspection'],
    tools: 'Crimper, meter, lamp in series for the first switch-on',
    lathe: 'usable',
    undo: 'can-be-undone',
    mains: true,
    test: 'No-load voltage at or under 0.9 of what the drives stand; under 60 V within the time on its label, measured, with no drive connected.',
    safety:
      'Unplug, wait the longest time on any label, then measure with a meter tried on a known source before and after. Never work on it live. Mains wiring by someone who may do it.',
  },
  {
    id: 'wire-mains-drives',
    subsystem: 'motors',
    stage: 'bench-electrics',
    name: 'Wire the mains servo drives with filter, screens and earth',
    hours: [2, 4, 8],
    when: is('motor-supply', 'mains-direct'),
    after: ['wiring-schematic', 'incoming-inspection', 'fit-out-cabinet'],
    tools: 'Crimper, meter, the manuals of the drives',
    lathe: 'usable',
    undo: 'can-be-undone',
    mains: true,
    test: 'Screens clamped all round at both ends; earth from each drive under 0.1 ohm with the lead resistance taken off.',
    safety:
      'Mains wiring by someone who may do it. After switching off, wait the longest time on any label and measure that the inside is under 60 V.',
  },
  {
    id: 'bench-motors',
    subsystem: 'motors',
    stage: 'bench-electrics',
    name: 'Turn every motor on the bench: direction, current, homing inputs',
    hours: [1.7, 3, 6],
    after: ['first-power-control', 'configure-control', 'build-transformer-supply', 'wire-mains-drives'],
    afterWhen: [{ when: canRunAway, after: ['prove-stop-circuit'] }],
    tools: 'Paper flags, meter, clamp for the motor',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: '1,000 random moves bring a paper flag back to the same mark; current set as the plate says, half of it at rest; each home input seen by the control.',
    safety:
      'Clamp the motor down and keep belts off. One drive at a time, each with its fuse. Never plug or unplug a motor while its drive is on.',
    extra: [
      {
        id: 'extra-bench-motors-tuning',
        when: is('axis-motor', 'mains-servo'),
        hours: [2, 5.5, 13],
        why: 'servos are set up and tuned: direction of the encoder, torque limit, stiffness',
      },
      {
        id: 'extra-bench-motors-used-dc',
        when: is('axis-motor', 'used-dc-servo'),
        hours: [7, 15.5, 35],
        why: 'used servos have to be found out: wires, encoder, brushes, and a drive that takes step pulses',
      },
      {
        id: 'extra-bench-motors-built-in',
        when: is('drives', 'built-in-drives'),
        hours: [0, 1, 3],
        why: 'each motor with its drive inside is set up through its own plug',
      },
    ],
    scale: [
      oneMotor(0.6),
      { when: is('control', 'thread-synchroniser'), by: 0.7, why: 'direction and current; no home inputs' },
    ],
  },
  {
    id: 'alarm-test',
    subsystem: 'motors',
    stage: 'bench-electrics',
    name: 'Prove that a motor alarm stops the movement',
    hours: [0.3, 1, 2],
    when: hasAlarm,
    after: ['bench-motors'],
    tools: 'A test program, a hand on the encoder plug',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Unplug each encoder in turn, or hold the shaft: everything stops every time. A wire cut in the alarm line also stops it.',
    safety:
      'Low current and slow. Small motors are held by a strap or a clamp on the shaft, mains servos never by hand.',
    note: 'The alarm contacts stand in one line, closed while all is well, so that a broken wire reads as an alarm.',
    scale: [oneMotor(0.6)],
  },
  {
    id: 'servo-first-enable',
    subsystem: 'motors',
    stage: 'carriage-stage',
    name: 'First enable of the servos on the machine, belt off',
    hours: [1, 2.5, 5],
    when: canRunAway,
    after: [
      'bench-motors',
      'prove-stop-circuit',
      'interim-stop',
      'bond-and-measure-earths',
      'align-carriage-screw',
    ],
    tools: 'Hand on the stop button, meter',
    lathe: 'out',
    undo: 'can-be-undone',
    test: 'Turned by hand with the drive off, the counts go the right way; enabled at a low torque limit it holds still; the stop removes power each time.',
    safety:
      'A servo whose encoder counts backwards runs away at full force. Belt off, hand on the stop, low torque limit, nobody near the slide.',
    scale: [oneMotor(0.6)],
  },
  {
    id: 'rehome-each-part',
    subsystem: 'motors',
    stage: 'prove',
    name: 'Put a homing move at the start of every program',
    hours: [0.2, 0.5, 1],
    when: all(is('axis-motor', 'open-loop-stepper'), runsPrograms),
    after: ['homing-and-soft-limits'],
    tools: 'The program template',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Step the motor off by hand between two parts: the second part is still right.',
    safety: 'Tool out of every bore and groove before homing; first run slow with a hand on feed hold.',
    note: 'Plain steppers lose their place without telling, so each part starts from the switches again.',
  },
];
