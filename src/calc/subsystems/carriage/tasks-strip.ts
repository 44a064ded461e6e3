import { any, asked, is, not } from '../../core/condition.ts';
import type { Task } from '../../core/task.ts';
import { leadScrewSynchroniser } from '../purpose/paths.ts';
import { leadScrewKept } from './screw.ts';

/** From the offering-up of brackets to a bare bed. */
export const stripTasks: readonly Task[] = [
  {
    id: 'dry-fit-brackets',
    subsystem: 'carriage',
    stage: 'carriage-stage',
    name: 'Offer up what fits with the old screws in place',
    hours: [1, 2, 4],
    when: any(asked('carriage-drive'), asked('cross-screw')),
    after: ['carriage-brackets', 'incoming-inspection'],
    afterWhen: [{ when: not(asked('carriage-drive')), after: ['cross-brackets'] }],
    tools: 'Clamps, transfer punches',
    lathe: 'usable',
    undo: 'can-be-undone',
    test: 'Brackets held with loose screws: full travel free, and clear of covers, tailstock and chuck guard at both ends.',
    scale: [
      { when: leadScrewKept, by: 0.5, why: 'one motor plate' },
      { when: leadScrewSynchroniser, by: 0.5, why: 'nothing else moves' },
      { when: not(asked('carriage-drive')), by: 0.5, why: 'one slide only' },
    ],
  },
  {
    id: 'strip-carriage',
    subsystem: 'carriage',
    stage: 'carriage-stage',
    name: 'Take the carriage drive apart: lead screw, gears, insides of the apron',
    hours: [1.5, 3, 6],
    when: asked('carriage-drive'),
    after: ['dry-fit-brackets'],
    tools: 'Spanners, punches, bags and labels, camera',
    lathe: 'out',
    undo: 'partly',
    test: 'A photograph before each part comes off; bolts and spacers in labelled bags, taper pins marked with their direction.',
    safety: 'Unplug the lathe first. Support the apron: it is heavier than it looks.',
    extra: [
      {
        id: 'extra-strip-carriage-replaced-apron',
        when: is('apron', 'replace-apron'),
        hours: [0.5, 1, 2],
        why: 'the apron comes off whole, is greased and boxed',
      },
      {
        id: 'extra-strip-carriage-pinned-feeds',
        when: is('old-feeds', 'disable-old-feeds'),
        hours: [0.3, 0.8, 2],
        why: 'levers and gears are pinned out of mesh and labelled',
      },
    ],
    scale: [
      { when: is('apron', 'keep-apron'), by: 0.6, why: 'the apron stays whole' },
      { when: leadScrewKept, by: 0.7, why: 'the lead screw stays on its brackets' },
      { when: leadScrewSynchroniser, by: 0.6, why: 'only the link to the change gears comes off' },
    ],
  },
  {
    id: 'remove-old-feeds-task',
    subsystem: 'carriage',
    stage: 'carriage-stage',
    name: 'Take off gearbox, feed shaft and brackets; plug the oil ways',
    hours: [0.5, 2, 5],
    when: is('old-feeds', 'remove-old-feeds'),
    after: ['strip-carriage'],
    tools: 'Spanners, plugs, bags and labels',
    lathe: 'out',
    undo: 'can-be-undone',
    test: 'The spindle turns by hand with nothing following it; no oil drips overnight.',
    safety: 'Unplugged. Keep fingers out of the gears while somebody turns the spindle.',
    scale: [{ when: leadScrewKept, by: 0.6, why: 'only the gears that drove the lead screw come off' }],
  },
  {
    id: 'offer-up-rest',
    subsystem: 'carriage',
    stage: 'carriage-stage',
    name: 'Offer up the rest on the bare machine, screws loose',
    hours: [0.5, 1, 2],
    when: is('carriage-drive', 'ball-screw-front', 'ball-screw-back', 'sliding-screw', 'rack-pinion'),
    after: ['strip-carriage', 'remove-old-feeds-task'],
    tools: 'Clamps, alignment bar, transfer punches',
    lathe: 'out',
    undo: 'can-be-undone',
    test: 'Every hole marked with its bracket in place, and looked at once more before a drill is picked up.',
    note: 'Until a hole is drilled everything can still go back.',
  },
];
