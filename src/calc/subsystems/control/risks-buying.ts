import { is } from '../../core/condition.ts';
import type { Risk } from '../../core/risk.ts';
import { onPorts, realTimePc } from './kinds.ts';

export const buyingRisks: readonly Risk[] = [
  {
    id: 'pc-jitter',
    subsystem: 'control',
    name: 'The PC hiccups in mid-cut',
    cause: 'A PC that was never tested, power saving, a new kernel or driver, a network chip that pauses.',
    effect: 'Random stalls, and a machine that disables itself while cutting.',
    sign: 'Spikes in a long timing test while the screen is busy.',
    prevent:
      'Test the very PC for 12 hours before you order the rest; power saving off; a network port of its own; freeze updates; copy the disk.',
    chance: [0.1, 0.25, 0.45],
    money: [0, 90, 260],
    hours: [2, 10, 40],
    kind: 'electrics',
    stage: 'bench-electrics',
    when: realTimePc,
    levers: [{ when: onPorts, by: 1.6, why: 'the software makes every pulse itself' }],
  },
  {
    id: 'control-cannot-do-it',
    subsystem: 'control',
    name: 'The control cannot do something you took for granted',
    cause: 'Fixed encoder lines, few inputs, no feed per turn, odd codes.',
    effect: 'Buy again, or live without.',
    sign: 'A manual that was not read before paying.',
    prevent: 'Read it first: inputs, encoder lines, threading, diameter mode, tool count, soft limits.',
    chance: [0.08, 0.2, 0.35],
    money: [60, 250, 700],
    hours: [3, 10, 30],
    kind: 'electrics',
    stage: 'bench-electrics',
    when: { kind: 'always' },
    levers: [
      {
        when: is('control', 'standalone-control', 'small-board'),
        by: 1.6,
        why: 'what it cannot do it will never do',
      },
      { when: is('control', 'parallel-port-pc'), by: 1.6, why: 'one port has five inputs' },
      {
        when: is('control', 'thread-synchroniser'),
        by: 0.3,
        why: 'it promises little, does that, and costs little to replace',
      },
    ],
  },
  {
    id: 'settings-lost',
    subsystem: 'control',
    name: 'The settings are lost',
    cause: 'A dead disk or memory card, and no notes.',
    effect: 'Days of commissioning again.',
    sign: 'No copy anywhere but in the machine.',
    prevent: 'Print the settings sheet, copy the disk, keep two copies in two places.',
    chance: [0.08, 0.18, 0.35],
    money: [0, 20, 120],
    hours: [1, 6, 24],
    kind: 'electrics',
    stage: 'prove',
    when: { kind: 'always' },
    levers: [
      {
        when: is('control', 'standalone-control', 'thread-synchroniser'),
        by: 0.5,
        why: 'its parameters fit on a sheet of paper',
      },
      { when: is('machines-served', 'two-machines-in-turn'), by: 1.6, why: 'two sets, changed often' },
    ],
  },
];
