import { is } from '../../core/condition.ts';
import type { Task } from '../../core/task.ts';
import { crossWork } from './screw.ts';

const base = { subsystem: 'cross-slide' } as const;

export const making: readonly Task[] = [
  {
    ...base,
    id: 'cross-brackets',
    stage: 'make-first',
    name: 'Make the cross-slide front plate, nut block and motor plate',
    hours: [4, 9, 17],
    when: crossWork,
    after: ['bracket-drawings', 'incoming-inspection'],
    tools: 'Drill press or mill, lathe',
    lathe: 'cutting',
    undo: 'can-be-undone',
    test: 'Bolts up dry on the bench; screw height matches the slide within 0.1 mm.',
    safety: 'Clamp every part. No gloves at a turning spindle.',
    extra: [
      {
        id: 'extra-cross-brackets-rear',
        when: is('cross-motor-place', 'rear-belt'),
        hours: [3, 6, 12],
        why: 'a rear bracket and a longer screw',
      },
      {
        id: 'extra-cross-brackets-large-nut',
        when: is('cross-screw', 'ball-screw-16'),
        hours: [1, 2, 4],
        why: 'the block of the larger nut is cut away until it clears the saddle',
      },
    ],
    scale: [
      { when: is('cross-screw-hold', 'original-bracket'), by: 0.75, why: 'the front bracket stays' },
      { when: is('cross-motor-place', 'front-direct'), by: 0.85, why: 'no belt to make room for' },
    ],
  },
  {
    ...base,
    id: 'turn-cross-nut',
    stage: 'make-first',
    name: 'Turn and split an adjustable nut for the screw you keep',
    hours: [1.5, 3, 6],
    when: is('cross-screw', 'original-cross-screw'),
    after: ['bracket-drawings', 'incoming-inspection'],
    tools: 'Lathe, tap or single-point tool for the thread',
    lathe: 'cutting',
    undo: 'can-be-undone',
    test: 'Runs the whole screw with even drag; play under 0.03 mm at three places.',
    safety: 'Hold small parts in the right chuck, tool at centre height, key out, eyes covered, no gloves.',
  },
  {
    ...base,
    id: 'make-riser',
    stage: 'make-first',
    name: 'Make the block that replaces the compound',
    hours: [2, 3.5, 7],
    when: is('compound', 'riser-block', 'slotted-riser-plate'),
    after: ['measure-geometry', 'incoming-inspection'],
    tools: 'Lathe face plate or mill',
    lathe: 'cutting',
    undo: 'can-be-undone',
    test: 'The tool tip reaches centre with every holder near the middle of its adjustment.',
    safety:
      'A block on a face plate is balanced, clamped twice, and turned round once by hand before power. Lowest speed first.',
    extra: [
      {
        id: 'extra-make-riser-slots',
        when: is('compound', 'slotted-riser-plate'),
        hours: [2, 5, 10],
        why: 'T-slots to mill',
      },
    ],
  },
];
