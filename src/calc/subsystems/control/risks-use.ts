import { is, not } from '../../core/condition.ts';
import type { Risk } from '../../core/risk.ts';
import { synchroniser, twoMachines } from './kinds.ts';

const typed = is('program-making', 'typed-programs');
const rearPost = is('tool-holding', 'quick-change-and-rear-post');

export const useRisks: readonly Risk[] = [
  {
    id: 'wrong-direction',
    subsystem: 'control',
    name: 'The first move goes the wrong way or too far',
    cause: 'Steps, sign, or inch and millimetre set wrong.',
    effect: 'A slide drives into the chuck or off its end.',
    sign: 'Told 1 mm it moves 2, or backwards.',
    prevent: 'First moves in the middle of the travel, low current, hand on the stop; check with a rule.',
    chance: [0.2, 0.35, 0.55],
    money: [0, 30, 250],
    hours: [0.5, 2, 8],
    kind: 'electrics',
    stage: 'commission',
    when: { kind: 'always' },
    levers: [
      { when: twoMachines, by: 1.6, why: 'there are two sets of signs and scales' },
      { when: synchroniser, by: 0.5, why: 'few settings, and short moves' },
    ],
  },
  {
    id: 'diameter-radius-mix-up',
    subsystem: 'control',
    name: 'Diameter taken for radius, or an arc turned round',
    cause: 'Programming mode forgotten; front and rear tools swap the direction of arcs.',
    effect: 'Twice the depth of cut, or a crash.',
    sign: 'The first air cut looks mirrored or too wide.',
    prevent: 'Air cut first, one template header, a card with the signs on the machine.',
    chance: [0.25, 0.45, 0.65],
    money: [0, 30, 250],
    hours: [0.5, 3, 10],
    kind: 'other',
    stage: 'prove',
    when: not(synchroniser),
    levers: [
      { when: typed, by: 1.6, why: 'every sign is typed by hand' },
      { when: rearPost, by: 1.6, why: 'the rear tool turns signs and arcs round' },
    ],
  },
  {
    id: 'learning-curve',
    subsystem: 'control',
    name: 'Learning takes so long that the machine stands idle',
    cause: 'Offsets, tip radius and software to learn all at once.',
    effect:
      'A finished machine that makes nothing. The hours of learning stand in the plan as a task, so nothing is added here.',
    sign: 'No part made in the first month.',
    prevent: 'Begin with turning forms, one template, and stock bought for practice.',
    chance: [0.15, 0.3, 0.5],
    money: [0, 0, 0],
    hours: [0, 0, 0],
    kind: 'other',
    stage: 'prove',
    when: { kind: 'always' },
    levers: [
      {
        when: is('program-making', 'typed-programs', 'drawing-to-path'),
        by: 1.6,
        why: 'more to learn before the first part',
      },
      { when: synchroniser, by: 0.5, why: 'it is used like the old lathe' },
    ],
    countedIn: 'tasks',
  },
  {
    id: 'crash-in-first-year',
    subsystem: 'control',
    name: 'A crash in the first year',
    cause: 'A wrong offset, a forgotten tailstock, a tool longer than last time.',
    effect: 'A broken tool or holder, a bent bracket, zero lost.',
    sign: 'A near miss that nobody wrote down.',
    prevent: 'Air cut, one line at a time, soft limits for the jaws, feed turned down for every first part.',
    chance: [0.2, 0.35, 0.55],
    money: [10, 60, 250],
    hours: [1, 5, 16],
    kind: 'other',
    stage: 'prove',
    when: { kind: 'always' },
    levers: [
      { when: is('tool-holding', 'automatic-changer'), by: 1.6, why: 'one wrong index is a crash' },
      { when: typed, by: 1.6, why: 'a typing error moves as told' },
      { when: synchroniser, by: 0.3, why: 'no offsets, no fast moves, and a hand stays near the slides' },
    ],
  },
  {
    id: 'wrong-machine-settings',
    subsystem: 'control',
    name: 'One machine runs on the settings of the other',
    cause: 'Changed over in a hurry, with the old set still loaded.',
    effect: 'A slide moves twice as far as told, or the wrong way.',
    sign: 'The first slow move after a changeover measures wrong.',
    prevent:
      'Settings chosen by the plug, not by memory; homing and one measured move after each changeover.',
    chance: [0.05, 0.15, 0.3],
    money: [0, 60, 300],
    hours: [0.5, 3, 10],
    kind: 'electrics',
    stage: 'prove',
    when: twoMachines,
    levers: [
      {
        when: is('others-at-machine', 'family-or-friends', 'people-i-employ'),
        by: 1.6,
        why: 'somebody else changed it over last',
      },
    ],
  },
];
