import { all, is } from '../../core/condition.ts';
import type { Rule } from '../../core/rule.ts';
import { tailstockDriven } from '../motors/driven.ts';
import { asTheMakerMadeIt, onPorts, realTimePc, synchroniser, wheelsOnOnePort } from './kinds.ts';

/** What each kind of control can and cannot do. */
export const kindRules: readonly Rule[] = [
  {
    id: 'changer-needs-logic',
    subsystem: 'control',
    when: is('tool-holding', 'automatic-changer'),
    then: [
      {
        kind: 'requires',
        decision: 'control',
        options: ['motion-card-pc', 'desktop-with-controller', 'standalone-control'],
      },
      { kind: 'assumes', name: 'outputs-needed', value: 3 },
      { kind: 'assumes', name: 'inputs-needed', value: 2 },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A tool changer needs three outputs, two inputs and logic: read in the manual that your very control can run one.',
  },
  {
    id: 'third-axis-needs-a-control-for-it',
    subsystem: 'control',
    when: tailstockDriven,
    then: [
      {
        kind: 'requires',
        decision: 'control',
        options: [
          'motion-card-pc',
          'parallel-port-pc',
          'two-parallel-ports-pc',
          'desktop-with-controller',
          'small-board',
        ],
      },
    ],
    say: 'A motor on the tailstock is a third axis, and two-axis lathe controls have no output for it.',
  },
  {
    id: 'software-timing-limits',
    subsystem: 'control',
    when: onPorts,
    then: [
      { kind: 'assumes', name: 'pulse-limit-hz', value: 20000 },
      { kind: 'assumes', name: 'edge-limit-hz', value: 15000 },
      { kind: 'addsCheck', check: 'pulse-rate' },
      { kind: 'addsCheck', check: 'encoder-count-rate' },
      { kind: 'addsCheck', check: 'software-step-timing' },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Timing by software gives about 20,000 pulses and counts 15,000 encoder edges a second: it limits fast moves and encoder lines.',
  },
  {
    id: 'one-port-has-five-inputs',
    subsystem: 'control',
    when: wheelsOnOnePort,
    then: [
      { kind: 'suggests', decision: 'control', options: ['two-parallel-ports-pc'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'One printer port has five inputs; a handwheel, two homes, an encoder and a stop need more, so the plan buys a second port and board.',
  },
  {
    id: 'synchroniser-scope',
    subsystem: 'control',
    when: synchroniser,
    then: [
      { kind: 'asksNot', decisions: ['operator-panel', 'program-making'] },
      { kind: 'rulesOut', decision: 'tool-holding', options: ['automatic-changer'] },
      { kind: 'rulesOut', decision: 'holes', options: ['motor-tailstock'] },
      {
        kind: 'requires',
        decision: 'spindle-sensor',
        options: ['slotted-disc', 'encoder-100-200', 'encoder-1000-up', 'ring-encoder'],
      },
      { kind: 'requires', decision: 'speed-command', options: ['speed-by-knob'] },
    ],
    say: 'A thread synchroniser brings its own keys and cycles, leaves spindle speed to the knob, and needs a sensor that counts the spindle in steps.',
  },
  {
    id: 'synchroniser-makes-no-profiles',
    subsystem: 'control',
    when: all(synchroniser, is('purpose', 'profiles', 'repeat-batches')),
    then: [
      { kind: 'suggests', decision: 'control', options: ['motion-card-pc', 'standalone-control'] },
      { kind: 'warns', level: 'look' },
    ],
    say: 'A thread synchroniser follows no profiles and keeps no tool table; batches stay hand work with stops.',
  },
  {
    id: 'read-what-the-board-can-do',
    subsystem: 'control',
    when: is('control', 'small-board'),
    then: [
      { kind: 'addsTask', task: 'read-control-manual' },
      { kind: 'warns', level: 'look' },
    ],
    say: 'Read in the list of its firmware, before you pay, that the board does threading, diameter mode and a tool table.',
  },
  {
    id: 'manual-before-money',
    subsystem: 'control',
    when: asTheMakerMadeIt,
    then: [{ kind: 'gate', gate: 'manual read', of: ['read-control-manual'], before: ['order-long-lead'] }],
    say: 'The manual decides what this control can do, so it is read before the order.',
  },
  {
    id: 'test-the-pc-before-ordering',
    subsystem: 'control',
    when: realTimePc,
    then: [
      { kind: 'gate', gate: 'timing test', of: ['pc-jitter-test'], before: ['order-long-lead'] },
      { kind: 'warns', level: 'note' },
    ],
    say: 'Run the very PC under load for 12 hours before the rest is bought: everything else hangs on its timing.',
  },
  {
    id: 'drives-drop-when-computer-hangs',
    subsystem: 'control',
    when: is(
      'control',
      'parallel-port-pc',
      'two-parallel-ports-pc',
      'motion-card-pc',
      'desktop-with-controller',
      'small-board',
    ),
    then: [{ kind: 'suggests', decision: 'watchdog', options: ['heartbeat-relay', 'drive-enable-chain'] }],
    say: 'The drives must drop by wire when the computer stops answering; a relay that waits for its pulse does that.',
  },
  {
    id: 'standalone-halves-the-cabinet',
    subsystem: 'control',
    when: is('control', 'standalone-control'),
    then: [{ kind: 'scalesTask', tasks: ['fit-out-cabinet'], by: 0.5 }],
    say: 'A ready-made control brings half of the cabinet in its own case.',
  },
];
