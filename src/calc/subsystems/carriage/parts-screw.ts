import { all, is } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { ballOnCarriage, leadScrewKept, noKit } from './screw.ts';

/** Screws, nuts and what is done to their ends. */
export const screwParts: readonly Part[] = [
  {
    id: 'ball-screw-carriage',
    subsystem: 'carriage',
    name: 'Ball screw for the carriage, rolled, one nut',
    note: '16 mm with 5 mm lead on small and medium lathes, 20 mm with 5 mm on large ones. Over a metre it travels as long freight.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    spares: 'None, unless you put balls back yourself: then a spare nut.',
    inspect: 'Threaded and total length, play of the nut under 0.05 mm, stub true within 0.03 mm.',
    needs: [{ when: is('carriage-nut', 'rolled-single-nut'), qty: 1, why: 'it moves the carriage' }],
  },
  {
    id: 'ball-screw-carriage-preloaded',
    subsystem: 'carriage',
    name: 'Ball screw for the carriage, rolled, nut without play',
    note: 'Double nut or oversize balls. The nut is 1.6 to 1.9 times as long and takes that much of the travel.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    inspect: 'Drag even over the whole length, length of the nut against the drawing.',
    needs: [
      { when: is('carriage-nut', 'rolled-preloaded-nut'), qty: 1, why: 'it moves the carriage without play' },
    ],
  },
  {
    id: 'ball-screw-carriage-ground',
    subsystem: 'carriage',
    name: 'Ball screw for the carriage, ground, nut without play',
    note: 'Small new ones have become cheap; used ones cost half, but look for dents from standing still.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    inspect: 'Turn it slowly under a light pull: no rough places. Stub true within 0.01 mm.',
    needs: [
      {
        when: is('carriage-nut', 'ground-preloaded-nut'),
        qty: 1,
        why: 'it moves the carriage true and without play',
      },
    ],
  },
  {
    id: 'sliding-screw-carriage',
    subsystem: 'carriage',
    name: 'Sliding screw for the carriage with twin nuts',
    note: 'Precision trapezoidal screw; the two nuts are set against each other.',
    unit: 'set',
    combine: 'most',
    scaled: true,
    spares: 'One set of nuts: they wear.',
    inspect: 'Straight when rolled on a flat plate; nuts run over the whole length by hand.',
    needs: [{ when: is('carriage-drive', 'sliding-screw'), qty: 1, why: 'it moves the carriage' }],
  },
  {
    id: 'nut-housing-carriage',
    subsystem: 'carriage',
    name: 'Housing for the carriage ball nut',
    note: 'A block that takes the flange of the nut. Check its height against the centre of the screw.',
    unit: 'each',
    combine: 'most',
    inspect: 'The nut goes in by hand; the face under the flange is square.',
    needs: [{ when: all(ballOnCarriage, noKit), qty: 1, why: 'one for the ball nut' }],
  },
  {
    id: 'screw-end-machining',
    subsystem: 'carriage',
    name: 'Screw ends turned to your own drawing, surcharge',
    note: 'What the seller adds for ends that are not his pattern.',
    unit: 'job',
    combine: 'most',
    inspect: 'Every diameter and length against your drawing, before anything is fitted.',
    needs: [
      {
        when: is('carriage-screw-machining', 'own-drawing-ends'),
        qty: 1,
        why: 'both ends are made to your drawing',
      },
    ],
  },
  {
    id: 'screw-end-inserts',
    subsystem: 'carriage',
    name: 'Inserts for turning hard screw ends',
    note: 'Carbide or boron nitride for 58 to 62 HRC. Buy more than one edge.',
    unit: 'lot',
    combine: 'most',
    spares: 'Edges for a second screw end.',
    needs: [
      {
        when: is('carriage-screw-machining', 'turned-here-ends'),
        qty: 1,
        why: 'the skin of the screw is hard',
      },
    ],
  },
  {
    id: 'thrust-washers-lead-screw',
    subsystem: 'carriage',
    name: 'Thrust bearings and washers for the lead screw',
    note: 'Needle thrust bearings and hard washers, two sets, in the place of its plain collar.',
    unit: 'set',
    combine: 'most',
    spares: 'One set: small and easily bent.',
    needs: [{ when: leadScrewKept, qty: 1, why: 'the end float of the old lead screw is taken out' }],
  },
];
