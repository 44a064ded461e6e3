import { is, not } from '../../core/condition.ts';
import type { Decision } from '../../core/decision.ts';

const stand: Decision = {
  id: 'stand',
  subsystem: 'approach',
  place: 'guide',
  name: 'What it stands on',
  ask: 'What will the lathe stand on?',
  why: 'Slides that start and stop shake the bench. A bed that twists turns tapers.',
  thumb: 'Level within 0.02 mm in a metre at both ends of the bed, and the same a week later.',
  findOut:
    'Set a machinist’s level across the bed at the chuck, then at the tailstock end. Write down both readings; the difference is the twist. Or turn two collars 100 mm apart and measure both.',
  assume: ['existing-bench', 'stiff-stand'],
  assumeWhy: 'Most lathes stay where they are.',
  open: 'options',
  options: [
    {
      id: 'existing-bench',
      label: 'The bench it is on, bolted down',
      means: 'Nothing is moved; the feet are bolted and shimmed.',
      gains: 'No work and no cost.',
      wrong: 'Wood moves with the weather and the bed with it: tapers come and go with the seasons.',
      skill: 1,
      needs: 'A level.',
    },
    {
      id: 'stiff-stand',
      label: 'A stiff stand on levelling feet',
      means: 'A welded or filled base with adjustable feet, with room for the cabinet below.',
      gains: 'Less chatter, and a place for the electrics.',
      wrong: 'Money, floor space, and 4 to 16 hours; the lathe is lifted twice.',
      skill: 2,
      needs: 'A hoist, or two people.',
    },
  ],
};

const shopTools: Decision = {
  id: 'shop-tools',
  subsystem: 'approach',
  place: 'guide',
  name: 'Measuring and hand tools',
  ask: 'Do you have indicators, meter, crimpers and pullers already?',
  why: 'They are not part of the machine, but it cannot be built or proved without them. Bought all at once they are a large line of the plan.',
  thumb:
    'Two indicators, calipers and micrometer, meter, crimpers, tachometer, spring scale, puller and pin spanner.',
  findOut: 'Lay them on the bench and tick them off. An indicator that sticks does not count.',
  assume: ['have-shop-tools', 'have-some-shop-tools', 'have-no-shop-tools'],
  assumeWhy: 'Most people who own a lathe own these tools.',
  open: 'assumed',
  options: [
    {
      id: 'have-shop-tools',
      label: 'Yes, nearly all',
      means: 'Indicators, calipers, micrometer, meter, crimpers and pullers are in the drawer.',
      gains: 'Nothing to buy.',
      wrong: 'One that is missing stops the work on a Sunday.',
      skill: 1,
    },
    {
      id: 'have-some-shop-tools',
      label: 'Some: calipers and hand tools',
      means: 'Indicator, meter, crimpers, tachometer and spring scale are still to buy.',
      gains: 'You buy about half of them.',
      wrong: 'A cheap indicator with a sticky stem lies by more than the play you look for.',
      skill: 1,
    },
    {
      id: 'have-no-shop-tools',
      label: 'Hardly any',
      means: 'The whole set is to buy.',
      gains: 'They stay useful long after this job.',
      wrong: 'People tend to buy them after the first mistake instead of before.',
      skill: 1,
    },
  ],
};

const oldParts: Decision = {
  id: 'old-parts',
  subsystem: 'approach',
  place: 'guide',
  name: 'The old parts',
  ask: 'What happens to the parts you take off?',
  why: 'Screws, gears, gearbox and motor have buyers. They are also your way back.',
  thumb: 'Keep everything until the machine has made a batch of good parts.',
  askWhen: not(is('which-lathe', 'dead-training-machine')),
  assume: ['keep-old-parts', 'sell-old-parts'],
  assumeWhy: 'Kept parts can still be sold later.',
  open: 'options',
  options: [
    {
      id: 'keep-old-parts',
      label: 'Label and keep them',
      means: 'Cleaned, oiled, bagged, labelled and put on a shelf.',
      gains: 'The lathe can be put back, or sold complete.',
      wrong: 'A box in the way. Unlabelled bags are scrap after a year.',
      skill: 1,
    },
    {
      id: 'sell-old-parts',
      label: 'Sell them when it works',
      means: 'Lead screw, change gears, gearbox, compound and motor go to others who need them.',
      gains: 'Some money comes back, and the shelf is free.',
      wrong: 'There is no way back, and the lathe is worth less as a lathe.',
      skill: 1,
    },
  ],
};

export const workshopDecisions: readonly Decision[] = [stand, shopTools, oldParts];
