import { any, is, not } from '../../core/condition.ts';
import type { Risk } from '../../core/risk.ts';
import { hasSpareLathe, synchroniser, trainingMachine } from './paths.ts';

export const risks: readonly Risk[] = [
  {
    id: 'hand-use-regretted',
    subsystem: 'purpose',
    name: 'You miss turning by hand',
    cause: 'The handwheels are gone or slow to reach.',
    effect: 'Simple jobs take longer, and some people buy a second lathe.',
    sign: 'Many "just quickly" jobs in the job list.',
    prevent:
      'Choose how much hand use survives before anything else; electronic wheels, and forms for simple cuts.',
    chance: [0.2, 0.4, 0.6],
    money: [0, 200, 1200],
    hours: [0, 5, 20],
    kind: 'other',
    stage: 'prove',
    when: { kind: 'always' },
    levers: [
      { when: is('hand-use', 'no-hand-use'), by: 1.6, why: 'no hand use is left' },
      {
        when: is('hand-use', 'hand-cranks', 'fully-reversible'),
        by: 0.5,
        why: 'real cranks, or a way back, remain',
      },
      { when: hasSpareLathe, by: 0.5, why: 'another lathe stays manual' },
      { when: synchroniser, by: 0.5, why: 'the handwheels stay' },
    ],
    countedIn: 'nowhere',
  },
  {
    id: 'hidden-wear',
    subsystem: 'purpose',
    name: 'The bought machine is worse than it looked',
    cause: 'Paint, oil and a quick sale hide wear, a crack or missing parts.',
    effect: 'Parts and weeks for making good, or another machine.',
    sign: 'The seller will not let you run it, or put an indicator on it.',
    prevent: 'Take indicator and test bar along, and do the survey before paying.',
    chance: [0.2, 0.4, 0.6],
    money: [20, 120, 400],
    hours: [3, 12, 40],
    kind: 'mechanics',
    stage: 'decide',
    when: any(is('which-lathe', 'buy-a-donor'), trainingMachine),
    levers: [
      { when: is('condition', 'measured-good'), by: 0.5, why: 'it was measured before paying' },
      {
        when: trainingMachine,
        by: 0.8,
        why: 'school machines have seen light work, though unpractised hands',
      },
    ],
  },
  {
    id: 'work-use-question',
    subsystem: 'purpose',
    name: 'Insurance or law asks who built the machine',
    cause: 'Somebody else works on it. A changed machine counts as a new one, and you as its maker.',
    effect: 'An insurer that does not pay, or an order to stop using it until guards and papers are there.',
    sign: 'Nobody has asked the insurer; the machine has no papers.',
    prevent:
      'Ask before building: insurer, local rules, and somebody who knows machine safety. Main switch with a padlock.',
    chance: [0.05, 0.15, 0.4],
    money: [0, 100, 1000],
    hours: [0, 4, 20],
    kind: 'other',
    stage: 'prove',
    when: not(is('others-at-machine', 'only-me')),
    levers: [{ when: is('others-at-machine', 'people-i-employ'), by: 1.6, why: 'people work on it for pay' }],
    countedIn: 'nowhere',
  },
];
