import { all, atLeast, below, is, known, not } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { byProgram, cutsThreads, looseNose, newMotor, singleEnded } from './drive.ts';

const base = { subsystem: 'spindle' } as const;
const speedByProgram = is('speed-command', 'speed-by-voltage', 'speed-by-serial');

const motor: readonly Rule[] = [
  {
    ...base,
    id: 'ordinary-drive-on-120-volts',
    when: all(is('spindle-motor', 'three-phase-drive'), is('mains-supply', 'volts-120')),
    then: [
      { kind: 'suggests', decision: 'spindle-motor', options: ['doubler-drive'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'Most drives of this kind want 230 V: up to about 0.55 kW take a doubler drive, above that have an electrician bring 230 V.',
  },
  {
    ...base,
    id: 'doubler-only-on-120-volts',
    when: is('mains-supply', 'volts-230'),
    then: [{ kind: 'rulesOut', decision: 'spindle-motor', options: ['doubler-drive'] }],
    say: 'A doubler drive is for 120 V supplies; you have 230 V.',
  },
  {
    ...base,
    id: 'doubler-is-small',
    when: all(is('spindle-motor', 'doubler-drive'), known('spindle-power'), not(below('spindle-power', 551))),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'A doubler drive serves motors to about 0.55 kW; a larger one asks for 230 V.',
  },
  {
    ...base,
    id: 'knob-board-is-live',
    when: all(is('spindle-motor', 'keep-speed-knob'), byProgram),
    then: [{ kind: 'warns', level: 'stop' }],
    say: 'The knob side of the factory speed board can be live at mains: an isolated adapter, never a common wire to the control.',
  },
  {
    ...base,
    id: 'single-phase-has-no-speed',
    when: is('spindle-motor', 'keep-single-phase'),
    then: [{ kind: 'requires', decision: 'speed-command', options: ['speed-by-knob'] }],
    say: 'A single-phase motor has one speed: you move the belt. A motor starter with no-volt release is in the parts.',
  },
  {
    ...base,
    id: 'single-phase-goes-forward',
    when: is('spindle-motor', 'keep-single-phase'),
    then: [{ kind: 'requires', decision: 'reversing', options: ['forward-only'] }],
    say: 'A program cannot reverse a single-phase motor safely while it turns.',
  },
  {
    ...base,
    id: 'speed-signal-is-isolated',
    when: is('speed-command', 'speed-by-voltage'),
    then: [{ kind: 'warns', level: 'note' }],
    say: 'Isolated output, a screened twisted pair, and three speeds to calibrate.',
  },
  {
    ...base,
    id: 'knob-board-may-only-switch',
    when: all(is('spindle-motor', 'keep-speed-knob'), speedByProgram),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'Some speed boards can only be switched on and off: find out before you buy.',
  },
  {
    ...base,
    id: 'clamp-the-speed-in-programs',
    when: speedByProgram,
    then: [
      { kind: 'addsCheck', check: 'chuck-speed' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Constant surface speed runs to full speed at the centre: a clamp stands in every program.',
  },
  {
    ...base,
    id: 'fastest-belt-sets-the-limit',
    when: all(newMotor, atLeast('belt-steps', 1.5)),
    then: [
      { kind: 'addsCheck', check: 'chuck-speed' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Set the speed limit of the drive for the fastest belt position: a limit set in the slow one is far too high when the belt is moved.',
  },
  {
    ...base,
    id: 'screwed-chuck-and-reverse',
    when: all(is('reversing', 'forward-and-reverse'), looseNose),
    then: [
      { kind: 'addsCheck', check: 'stop-energy' },
      { kind: 'warns', level: 'stop' },
    ],
    say: 'A screwed chuck can unscrew on reverse or on any hard stop: lock it, and without a lock go forward only and ramp for 5 s or more.',
  },
  {
    ...base,
    id: 'screwed-chuck-ramps-slowly',
    when: all(is('reversing', 'forward-only'), newMotor, looseNose),
    then: [
      { kind: 'assumes', name: 'shortest-stop-seconds', value: 5 },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A screwed chuck with nothing that holds it unscrews on a hard stop as well: ramp for 5 s or more, with no brake resistor.',
  },
  {
    ...base,
    id: 'less-to-set-up-with-a-knob',
    when: all(is('speed-command', 'speed-by-knob'), newMotor),
    then: [{ kind: 'scalesTask', tasks: ['configure-control'], by: 0.9 }],
    say: 'With the speed set by hand there is less for the control to be told about the spindle.',
  },
];

const sensor: readonly Rule[] = [
  {
    ...base,
    id: 'thread-needs-sensor',
    when: is('purpose', 'thread-cutting'),
    then: [{ kind: 'rulesOut', decision: 'spindle-sensor', options: ['no-sensor'] }],
    say: 'To cut a thread the control must know where the spindle is.',
  },
  {
    ...base,
    id: 'threads-ticked-need-sensor',
    when: cutsThreads,
    then: [{ kind: 'rulesOut', decision: 'spindle-sensor', options: ['no-sensor'] }],
    say: 'You ticked threads, and the control must then know where the spindle is.',
  },
  {
    ...base,
    id: 'too-many-lines-for-software',
    when: all(is('control', 'parallel-port-pc', 'two-parallel-ports-pc'), atLeast('spindle-speed-max', 3.75)),
    then: [{ kind: 'rulesOut', decision: 'spindle-sensor', options: ['encoder-1000-up', 'ring-encoder'] }],
    say: 'A printer port counts about 15,000 edges a second: 1,000 lines pass that at 225 turns a minute.',
  },
  {
    ...base,
    id: 'does-the-controller-follow-the-angle',
    when: all(
      is('control', 'desktop-with-controller'),
      is('spindle-sensor', 'encoder-1000-up', 'ring-encoder'),
    ),
    then: [
      { kind: 'addsTask', task: 'read-control-manual' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'Many external controllers read only one mark a turn while threading: read the manual before you buy.',
  },
  {
    ...base,
    id: 'pitch-follows-the-last-turn',
    when: is('spindle-sensor', 'one-mark-a-turn'),
    then: [
      { kind: 'addsCheck', check: 'thread-lead-error' },
      { kind: 'assumes', name: 'thread-re-entry', value: 'not promised' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'With one mark a turn the pitch follows the average of the last turn.',
  },
  {
    ...base,
    id: 'sagging-motor-spoils-threads',
    when: all(is('spindle-sensor', 'one-mark-a-turn'), is('spindle-motor', 'keep-speed-knob')),
    then: [{ kind: 'warns', level: 'look' }],
    say: 'Speed sags by 10 to 30 % under load, and the pitch follows it.',
  },
  {
    ...base,
    id: 'slipping-belt-and-motor-sensor',
    when: is(
      'spindle-motor',
      'three-phase-drive',
      'doubler-drive',
      'brushless-kit',
      'keep-single-phase',
      'keep-speed-knob',
    ),
    then: [{ kind: 'rulesOut', decision: 'sensor-place', options: ['on-motor-shaft'] }],
    say: 'Belts slip: a sensor on the motor does not know where the spindle is.',
  },
  {
    ...base,
    id: 'motor-counts-only-through-teeth',
    when: is('sensor-place', 'on-motor-shaft'),
    then: [
      { kind: 'assumes', name: 'spindle-belt', value: 'toothed' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'The servo knows the angle of the spindle only through a toothed belt, with the ratio set again at every change of belt position.',
  },
  {
    ...base,
    id: 'draw-tube-needs-the-bore-end',
    when: is('work-holding', 'lever-collets', 'power-chuck'),
    then: [{ kind: 'rulesOut', decision: 'sensor-place', options: ['on-spindle-end'] }],
    say: 'The draw tube comes out where that sensor would sit.',
  },
  {
    ...base,
    id: 'draw-tube-beside-the-sensor',
    when: all(
      is('work-holding', 'lever-collets', 'power-chuck'),
      is('spindle-sensor', 'encoder-100-200', 'encoder-1000-up', 'slotted-disc'),
    ),
    then: [
      { kind: 'addsCheck', check: 'bore-end-clearance' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'The draw tube and the sensor pulley want the same end of the spindle: check the room.',
  },
  {
    ...base,
    id: 'signal-pairs-need-a-receiver',
    when: all(is('spindle-sensor', 'encoder-1000-up', 'ring-encoder'), singleEnded),
    then: [{ kind: 'warns', level: 'note' }],
    say: 'The sensor sends signal pairs and the control takes single wires: a receiver is in the parts.',
  },
];

export const rules: readonly Rule[] = [...motor, ...sensor];
