import { all, any, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import {
  carriageDriven,
  crossDriven,
  cutsBrackets,
  leadScrewSynchroniser,
  newCarriageScrew,
  onlyMotorPlate,
  readyKit,
  tailstockDriven,
  trainingMachine,
} from './paths.ts';

const welded = all(is('brackets', 'welded'), not(readyKit));
const ordered = all(is('brackets', 'ordered-to-drawing'), not(readyKit));

/** One lot for each movement that gets a motor. */
const eachDriven = (source: typeof welded) => [
  { when: all(source, carriageDriven), qty: 1, why: 'brackets and motor plate of the carriage' },
  { when: all(source, crossDriven), qty: 1, why: 'brackets and motor plate of the cross slide' },
  { when: all(source, tailstockDriven), qty: 1, why: 'bracket and motor plate of the tailstock' },
];

export const bracketParts: readonly Part[] = [
  {
    id: 'bracket-stock',
    subsystem: 'approach',
    name: 'Plate and bar for brackets and motor plates',
    note: 'Aluminium or steel, 12 to 20 mm thick, one lot for each driven movement. Buy half as much again as the drawing says.',
    unit: 'lot',
    combine: 'sum',
    scaled: true,
    spares: 'Enough for a second go at each bracket: the first is often scrap.',
    needs: [
      ...eachDriven(cutsBrackets),
      {
        when: all(any(readyKit, trainingMachine), tailstockDriven),
        qty: 1,
        why: 'the tailstock motor needs a bracket that comes with no kit',
      },
    ],
  },
  {
    id: 'welding-plate',
    subsystem: 'approach',
    name: 'Steel plate for welded brackets',
    note: 'Plain mild steel, 8 to 12 mm, clean for welding, with something to machine off afterwards.',
    unit: 'lot',
    combine: 'sum',
    scaled: true,
    spares: 'A spare blank of each plate.',
    needs: eachDriven(welded),
  },
  {
    id: 'brackets-to-drawing',
    subsystem: 'approach',
    name: 'Brackets cut to your drawing by a service',
    note: 'Three or four single parts for each driven movement, cut by laser, water jet or a milling shop. Ask what tolerance the holes come with.',
    unit: 'lot',
    combine: 'sum',
    scaled: true,
    spares: 'Two of anything that is cheap to repeat.',
    inspect: 'Hole distances and bores against the drawing before anything is bolted on.',
    needs: [
      {
        when: all(ordered, carriageDriven, not(onlyMotorPlate)),
        qty: 1,
        why: 'brackets and motor plate of the carriage',
      },
      { when: all(ordered, crossDriven), qty: 1, why: 'brackets and motor plate of the cross slide' },
      { when: all(ordered, tailstockDriven), qty: 1, why: 'bracket and motor plate of the tailstock' },
    ],
  },
  {
    id: 'motor-plate-to-drawing',
    subsystem: 'approach',
    name: 'Motor plate for the lead screw, cut to your drawing',
    note: 'One plate with slots for the motor; the old screw keeps its own brackets. Price from little experience.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    inspect: 'Register and slots against the drawing.',
    needs: [{ when: all(ordered, onlyMotorPlate), qty: 1, why: 'it carries the motor of the lead screw' }],
  },
  {
    id: 'trial-stock',
    subsystem: 'approach',
    name: 'Stuff for trial brackets: cheap plate, board or filament',
    note: 'The first bracket shows what collides. Make it from something that costs little.',
    unit: 'lot',
    combine: 'most',
    needs: [
      {
        when: all(
          is('brackets', 'made-on-this-lathe', 'made-with-a-mill', 'printed-first', 'ordered-to-drawing'),
          not(readyKit),
          not(leadScrewSynchroniser),
        ),
        qty: 1,
        why: 'one trial of each bracket before the good material',
      },
    ],
  },
  {
    id: 'ready-kit-part',
    subsystem: 'approach',
    name: 'Ready kit of mechanical parts for your type of lathe',
    note: 'Brackets, nut housings and belt drives for one known casting. Ask which years and versions it fits, and what is not in the box.',
    unit: 'kit',
    combine: 'most',
    inspect: 'Hole distances against three dimensions of your casting, before anything is drilled.',
    needs: [
      {
        when: all(readyKit, not(trainingMachine)),
        qty: 1,
        why: 'the kit takes the place of brackets, nut housings and belt drives',
      },
    ],
  },
  {
    id: 'alignment-bar',
    subsystem: 'approach',
    name: 'Straight ground bar to line up the carriage screw',
    note: 'Ground bar of the diameter of the screw, as long as the distance between its blocks. It stands in for the screw while brackets are set.',
    unit: 'each',
    combine: 'most',
    inspect: 'Roll it on a flat plate: no light under it.',
    stage: 'carriage-stage',
    needs: [
      { when: newCarriageScrew, qty: 1, why: 'the new carriage screw has to lie parallel to the ways' },
    ],
  },
];
