import { all, any, atLeast, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { leadScrewAlone, leadScrewSynchroniser, trainingMachine } from './paths.ts';

const donor = is('which-lathe', 'buy-a-donor');
const bought = any(donor, trainingMachine);

/** Machines, moving them, and making good what they need. */
export const machineParts: readonly Part[] = [
  {
    id: 'donor-lathe',
    subsystem: 'approach',
    name: 'Used manual lathe to convert',
    note: 'Look for a wide flat cross slide and an unworn bed. A gearbox that you take out again is money thrown away.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    inspect: 'Bed wear, spindle lift and slides with an indicator before you pay.',
    needs: [{ when: donor, qty: 1, why: 'the lathe that is converted is bought for it' }],
  },
  {
    id: 'training-machine',
    subsystem: 'approach',
    name: 'Small training CNC lathe with dead electronics',
    note: 'What counts is the state of slides, ball screws and spindle. Ask for every paper and every cable that belongs to it.',
    unit: 'each',
    combine: 'most',
    inspect: 'Turn both screws by hand: no rough spots, no play over 0.03 mm. Spindle lift under 0.01 mm.',
    needs: [{ when: trainingMachine, qty: 1, why: 'the machine that gets new electronics' }],
  },
  {
    id: 'machine-transport',
    subsystem: 'approach',
    name: 'Bringing the bought machine home',
    note: 'Trailer, straps and helpers, or a carrier with a tail lift.',
    unit: 'job',
    combine: 'most',
    needs: [{ when: bought, qty: 1, why: 'the machine has to be fetched' }],
  },
  {
    id: 'lifting-hire',
    subsystem: 'approach',
    name: 'Hoist or crane for a day',
    note: 'Over about 120 kg two people are not enough. Sling the bed, never the spindle.',
    unit: 'job',
    combine: 'most',
    needs: [
      {
        when: all(any(bought, is('stand', 'stiff-stand')), atLeast('lathe-mass', 120)),
        qty: 1,
        why: 'the lathe is too heavy to lift by hand',
      },
    ],
  },
  {
    id: 'stand-upgrade',
    subsystem: 'approach',
    name: 'Stiff stand, filled base and levelling feet',
    note: 'Steel frame or cabinet with feet that can be set, filled with sand or concrete if it rings.',
    unit: 'lot',
    combine: 'most',
    scaled: true,
    needs: [{ when: is('stand', 'stiff-stand'), qty: 1, why: 'a base that does not twist' }],
  },
  {
    id: 'gib-strips',
    subsystem: 'approach',
    name: 'New adjustable strips for the slides (gibs)',
    note: 'Brass, bronze or cast iron, with new setting screws whose tips are turned flat.',
    unit: 'set',
    combine: 'most',
    spares: 'A few setting screws.',
    needs: [
      {
        when: is('condition', 'slides-need-adjusting', 'spindle-bearings-too'),
        qty: 1,
        why: 'the slides are fitted and set again',
      },
    ],
  },
  {
    id: 'spindle-bearings',
    subsystem: 'approach',
    name: 'Pair of spindle bearings with seals',
    note: 'Taper roller or angular contact as fitted. Read the numbers on the old ones, not in a list.',
    unit: 'set',
    combine: 'most',
    scaled: true,
    inspect: 'Numbers and makers’ marks equal on both; packed and oiled.',
    needs: [
      { when: is('condition', 'spindle-bearings-too'), qty: 1, why: 'the spindle bearings are changed' },
    ],
  },
  {
    id: 'machine-hire',
    subsystem: 'approach',
    name: 'Time on somebody’s mill or drill press',
    note: 'A club, a school, a friend or a small works. Agree on hours and on who mends what.',
    unit: 'job',
    combine: 'most',
    needs: [
      {
        when: is('mill-access', 'no-machine-tools'),
        qty: 1,
        why: 'you have no drill press or mill of your own',
      },
      {
        when: all(is('brackets', 'made-with-a-mill'), is('mill-access', 'borrowed-mill', 'drill-press-only')),
        qty: 1,
        why: 'the brackets are made on a mill that is not yours',
      },
    ],
  },
  {
    id: 'resale-credit',
    subsystem: 'approach',
    name: 'Old parts sold',
    note: 'Lead screw, gears, gearbox, compound and motor, sold once the machine has proved itself.',
    unit: 'lot',
    combine: 'most',
    credit: true,
    needs: [
      {
        when: all(is('old-parts', 'sell-old-parts'), not(leadScrewAlone)),
        qty: 1,
        why: 'you sell what comes off',
      },
    ],
  },
  {
    id: 'used-parts-saving',
    subsystem: 'approach',
    name: 'Saved on used motors and screws',
    note: 'About a third to a half of what new motors and screws cost, if the hunt goes well. It may be nothing.',
    unit: 'lot',
    combine: 'most',
    credit: true,
    needs: [
      {
        when: all(is('buying', 'mostly-used'), not(leadScrewSynchroniser)),
        qty: 1,
        why: 'motors and screws are bought used',
      },
    ],
  },
  {
    id: 'used-motor-saving',
    subsystem: 'approach',
    name: 'Saved on a used motor and sensor',
    note: 'About a third of what they cost new, if the hunt goes well. It may be nothing.',
    unit: 'lot',
    combine: 'most',
    credit: true,
    needs: [
      {
        when: all(is('buying', 'mostly-used'), leadScrewSynchroniser),
        qty: 1,
        why: 'motor and sensor are bought used',
      },
    ],
  },
];
