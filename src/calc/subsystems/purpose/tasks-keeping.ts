import { is } from '../../core/condition.ts';
import type { Task } from '../../core/task.ts';
import { clampedBrackets } from './paths.ts';

/** Work that keeps hand use, or the way back. */
export const keepingTasks: readonly Task[] = [
  {
    id: 'reversible-brackets',
    subsystem: 'purpose',
    stage: 'make-first',
    name: 'Make the brackets that clamp, so that no casting is drilled',
    hours: [5, 10, 20],
    when: clampedBrackets,
    after: ['bracket-drawings', 'incoming-inspection'],
    tools: 'Drill press or mill, files, transfer punches',
    lathe: 'cutting',
    undo: 'can-be-undone',
    test: 'Each bracket grips without marking a way; pushed with 150 N it moves under 0.02 mm and comes back.',
    safety:
      'Clamp the part before you drill it: a drill grabs as it breaks through. Eyes covered, iron dust to the vacuum, no gloves.',
  },
  {
    id: 'fit-hand-cranks',
    subsystem: 'purpose',
    stage: 'machine-wiring',
    name: 'Fit the hand cranks and the switch that knows they are on',
    hours: [3, 6, 12],
    when: is('hand-use', 'hand-cranks'),
    after: ['first-powered-carriage', 'fit-cross-motor'],
    tools: 'Reamer, hand tools, meter',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'With a crank engaged the drives cannot be enabled; folded or taken off, nothing sticks out that turns.',
    safety:
      'A crank that turns under power breaks fingers. Cranks are off for every powered move until this test has passed.',
  },
];
