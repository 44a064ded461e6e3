import { asked } from '../../core/condition.ts';
import type { Decision } from '../../core/decision.ts';
import { newCarriageScrew } from './screw.ts';

const screwEnds: Decision = {
  id: 'carriage-screw-ends',
  subsystem: 'carriage',
  place: 'guide',
  name: 'Ends of the carriage screw',
  ask: 'How are the ends of the carriage screw held?',
  why: 'One end takes all the push along the screw. Whatever play it has adds straight to the play of the axis.',
  thumb:
    'Before you blame the nut, push the screw end to end against an indicator: under 0.01 mm is accepted, under 0.005 is good.',
  askWhen: newCarriageScrew,
  assume: ['bought-end-blocks', 'made-angular-block', 'one-end-held', 'both-ends-held'],
  assumeWhy:
    'Until you choose we plan with bought blocks: one end takes the push, the other only keeps the screw straight.',
  open: 'options',
  options: [
    {
      id: 'one-end-held',
      label: 'One end held, the other free',
      means: 'A bearing block at the motor end only; the far end hangs in the nut.',
      gains: 'The shortest and simplest, with one block less to line up.',
      wrong:
        'A long screw whips above 1,000 to 1,500 turns a minute and, sooner, buckles when pushed. It hums and shakes at the far end of the travel.',
      skill: 2,
      needs: 'A travel under about 300 mm.',
    },
    {
      id: 'bought-end-blocks',
      label: 'Bought blocks at both ends',
      means:
        'One block takes the push in both directions, the other only keeps the end straight (fixed and supported).',
      gains: 'Parts that anybody sells, to a pattern that ready-turned screw ends fit.',
      wrong:
        'Cheap blocks hold plain ball bearings with 0.02 to 0.06 mm of play. An indicator on the screw end shows it when you push the carriage.',
      skill: 2,
      needs: 'Measure the play on arrival, and expect to change the bearings.',
    },
    {
      id: 'made-angular-block',
      label: 'Block you make, with angular-contact bearings',
      means:
        'A pair of bearings made to take push from both sides, in a block bored to fit; a simple support at the far end.',
      gains: 'Stiff and without play, in less room than a bought block.',
      wrong:
        'A bore that is 0.02 mm out makes the bearings loose or hot, and the block has to be made again on a lathe that still runs.',
      skill: 4,
      needs: 'Boring to a fit (housing H7 or K6) with faces parallel, before the lathe comes apart.',
    },
    {
      id: 'both-ends-held',
      label: 'Both ends take the push, screw stretched',
      means:
        'A pair of angular-contact bearings at each end, with the screw pulled slightly tight between them.',
      gains: 'The stiffest way, and the highest speed before the screw whips.',
      wrong:
        'A warm screw that was not stretched bows between its ends. Both blocks have to line up within 0.02 mm, or the bearings heat.',
      skill: 5,
      needs: 'Two bored blocks and patient lining up. Worth it on large or fast machines only.',
    },
  ],
};

const screwMachining: Decision = {
  id: 'carriage-screw-machining',
  subsystem: 'carriage',
  place: 'guide',
  name: 'Screw ends, who turns them',
  ask: 'Who turns the ends of the carriage screw?',
  why: 'A ball screw is hard on the outside, so its ends are awkward to turn. A wrong length is the commonest ordering mistake, and it costs weeks.',
  thumb:
    'Ends turned to the seller’s pattern cost little. Every mistake in a special length costs about three weeks.',
  findOut:
    'Draw the screw before you order: thread = travel + nut + run-off at both ends + covers; total = thread + both turned ends + the stub for pulley or coupling. Have a second person add it up.',
  askWhen: asked('carriage-screw-ends'),
  assume: ['seller-pattern-ends', 'own-drawing-ends', 'turned-here-ends'],
  assumeWhy: 'Until you choose we plan with ends as the seller turns them: they fit bought blocks.',
  open: 'options',
  options: [
    {
      id: 'seller-pattern-ends',
      label: 'Ready-turned to the seller’s drawing',
      means: 'You give a length; both ends come turned to fit common blocks.',
      gains: 'Bought blocks and pulleys slide on without any turning.',
      wrong:
        'The total length is sent for the threaded length, or the other way round. You see it when the nut stops short of the chuck.',
      skill: 1,
      needs: 'A pulley bored for the stub of that pattern: 8, 10 or 12 mm.',
    },
    {
      id: 'own-drawing-ends',
      label: 'Turned by the seller to your drawing',
      means: 'You draw both ends with their tolerances, and the shop makes them so.',
      gains: 'It is right the first time if it was drawn right, and any block can be used.',
      wrong: 'Two to six weeks, and nobody takes it back.',
      skill: 2,
      needs: 'A drawing with tolerances that a second person has read.',
    },
    {
      id: 'turned-here-ends',
      label: 'Turned by you on this lathe',
      means: 'You buy a screw that is too long and turn its ends yourself.',
      gains: 'Any length, at once, and stock that suits the next screw too.',
      wrong:
        'The hard skin chips tools, the end runs out of true, and balls fall out when the nut slips off without a sleeve under it.',
      skill: 4,
      needs:
        'Carbide or boron-nitride inserts, a steady, and a screw that passes through the spindle or fits the bed.',
    },
  ],
};

const coupling: Decision = {
  id: 'carriage-coupling',
  subsystem: 'carriage',
  place: 'guide',
  name: 'Carriage motor to screw',
  ask: 'How does the carriage motor turn the screw?',
  why: 'A reduction trades speed for push. Folding the motor back under the bed saves length on the floor.',
  thumb:
    'Under 100 turns a minute at the motor in ordinary cutting feed is normal. Choose the ratio for the push at threading feed (100 to 600 turns a minute) and for fast moves (at most 1,000 with a stepper, 3,000 with a servo).',
  findOut:
    'Measure the free room beyond the tailstock end of the bed, and under and behind it, to wall, tray and stand. A motor in line needs its own length plus the coupling plus 30 mm.',
  askWhen: asked('carriage-drive'),
  assume: ['carriage-belt-2-1', 'carriage-belt-1-1', 'carriage-direct', 'carriage-gearbox'],
  assumeWhy: 'Until you choose we plan with a toothed belt of about 2:1, which doubles the push.',
  open: 'options',
  options: [
    {
      id: 'carriage-direct',
      label: 'In line, through a coupling',
      means: 'The motor stands beyond the end of the screw, joined by a flexible coupling without play.',
      gains: 'The fewest parts, and no belt to tension or guard.',
      wrong:
        'Adds 120 to 180 mm of length and gains no push. Out of line by more than 0.05 mm it wears the coupling and hums.',
      skill: 2,
      needs: 'Room beyond the bed and a mount that is bored in line.',
    },
    {
      id: 'carriage-belt-1-1',
      label: 'Toothed belt, 1:1',
      means: 'The motor folds under or behind the bed and drives through two equal pulleys.',
      gains: 'Compact, full speed, and the belt takes up small errors of line.',
      wrong: 'A pulley held by a grub screw on a round shaft creeps: sizes drift slowly. No push is gained.',
      skill: 3,
      needs: 'Bored pulleys, clamp hubs and a guard.',
    },
    {
      id: 'carriage-belt-2-1',
      label: 'Toothed belt, about 2:1',
      means: 'The same with a larger pulley on the screw; anything from 1.5 to 3 to 1.',
      gains: 'Double the push and half the step, and the motor feels a quarter of the mass.',
      wrong:
        'Halves the fast moves, and the large pulley may hit bed or stand. With fewer than six teeth in mesh the stretch of the belt reads as play.',
      skill: 3,
      needs: 'Room for the large pulley, a belt 15 mm wide, clamp hubs and a guard.',
    },
    {
      id: 'carriage-gearbox',
      label: 'Planetary gearbox in line',
      means: 'A compact gearbox on the motor, coupled to the screw.',
      gains: 'A high ratio in line, and next to no play while it is new.',
      wrong: 'It costs more, it whines, and it wears. With a stepper the fast moves become too slow.',
      skill: 2,
      needs: 'A servo to make use of it.',
    },
  ],
};

export const endDecisions: readonly Decision[] = [screwEnds, screwMachining, coupling];
