import { all, any, asked, is, not } from '../../core/condition.ts';
import type { Task } from '../../core/task.ts';
import { newCrossScrew } from '../cross-slide/screw.ts';
import { trainingMachine } from '../purpose/paths.ts';
import { newCarriageScrew, readyKit } from './screw.ts';

const oneNewScrew = any(all(newCarriageScrew, not(newCrossScrew)), all(newCrossScrew, not(newCarriageScrew)));

/** What is measured and drawn before screws are ordered. */
export const drawTasks: readonly Task[] = [
  {
    id: 'measure-existing-axes',
    subsystem: 'carriage',
    stage: 'decide',
    name: 'Measure the axes that are there: leads, play, motor mounts, sensors',
    hours: [1, 3, 6],
    when: trainingMachine,
    after: ['measure-geometry'],
    tools: 'Indicator, calipers, camera',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Written down for each axis: lead of the screw, ratio, play at three places, bolt circle, register and shaft of the motor, and where its switches sit.',
    safety: 'Unplugged, and the cabinet measured dead before a hand goes in.',
  },
  {
    id: 'verify-casting',
    subsystem: 'carriage',
    stage: 'design-and-order',
    name: 'Check three dimensions of your casting against the kit',
    hours: [0.5, 1, 2],
    when: all(readyKit, any(asked('carriage-drive'), asked('cross-screw'))),
    after: ['measure-geometry', 'freeze-the-path'],
    tools: 'Calipers, the drawing of the kit',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Hole distance at the apron, height of the screw under the ways, and width of the tunnel agree with the kit within 0.5 mm. The seller confirms the version in writing.',
    safety: 'Unplugged.',
  },
  {
    id: 'screw-drawings',
    subsystem: 'carriage',
    stage: 'design-and-order',
    name: 'Draw the screws: lengths and ends',
    hours: [1.5, 3, 6],
    when: any(newCarriageScrew, newCrossScrew),
    after: ['freeze-the-path'],
    tools: 'Paper or drawing software',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Travel + nut + run-off at both ends + covers = thread; thread + both turned ends + stub = total. A second person adds it up.',
    note: 'First sketch where the blocks sit: their place decides the length.',
    extra: [
      {
        id: 'extra-screw-drawings-own-ends',
        when: is('carriage-screw-machining', 'own-drawing-ends'),
        hours: [1, 3, 6],
        why: 'your own drawing carries every tolerance',
      },
    ],
    scale: [{ when: oneNewScrew, by: 0.6, why: 'one new screw only' }],
  },
];
