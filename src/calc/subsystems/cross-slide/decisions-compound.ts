import { is, not } from '../../core/condition.ts';
import type { Decision } from '../../core/decision.ts';

export const compoundDecisions: readonly Decision[] = [
  {
    id: 'compound',
    subsystem: 'cross-slide',
    place: 'guide',
    name: 'Compound slide',
    ask: 'Keep the small swivelling slide or take it off?',
    why: 'It is the softest joint between work and tool, and the control does not know where it stands.',
    thumb:
      'With two powered slides it makes no move that they cannot. Taking it off stiffens the tool about 1.5 to 3 times (reports, not measurements of ours).',
    findOut:
      'Indicator on the tool, push with 150 N in three directions, compound locked. Write down how far the tool moves.',
    askWhen: not(is('which-lathe', 'dead-training-machine')),
    assume: ['riser-block', 'keep-compound', 'slotted-riser-plate', 'slotted-slide-plate'],
    assumeWhy: 'A solid block to the same height keeps your tool post and stiffens it.',
    open: 'options',
    options: [
      {
        id: 'keep-compound',
        label: 'Keep it, locked',
        means: 'The compound stays where it is, clamped and set parallel to the bed.',
        gains: 'Everything goes back, angles by hand stay possible.',
        wrong: 'It chatters, and one bump moves every tool offset. Lock it with an extra screw.',
        skill: 1,
      },
      {
        id: 'riser-block',
        label: 'Take it off, put a solid block there',
        means: 'A block of iron or steel (riser) to the height of the compound, with the tool post on top.',
        gains: 'Stiffer, 20 to 40 mm more room over the slide, and the quick-change post stays.',
        wrong: 'A wrong height takes all holders out of their adjustment. The old swivel bolts may be weak.',
        skill: 3,
        needs: 'the block faced to height within 0.1 mm before the lathe comes apart',
      },
      {
        id: 'slotted-riser-plate',
        label: 'Take it off, put a slotted plate there',
        means: 'A solid plate with T-slots that takes a post and one or two fixed tools beside it.',
        gains: 'Stiff, and it grows towards several tools in line without a new slide.',
        wrong: 'Heavier than a block, and the tools beside the post must clear the chuck.',
        skill: 4,
        needs: 'T-slots milled, by you or by someone else',
      },
      {
        id: 'slotted-slide-plate',
        label: 'A long slotted slide for tools in line',
        means:
          'The top of the cross slide becomes a long T-slotted plate for several fixed tools (gang tools).',
        gains: 'No time lost changing tools.',
        wrong: 'Tools hit the work or the chuck on large diameters. Needs 120 to 200 mm of cross travel.',
        skill: 4,
        needs: 'the plate milled, usually outside',
      },
    ],
  },
];
