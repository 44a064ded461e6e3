import { all, any, asked, is, not } from '../../core/condition.ts';
import type { Task } from '../../core/task.ts';
import { beltOnCross } from '../cross-slide/screw.ts';
import { leadScrewSynchroniser } from '../purpose/paths.ts';
import { beltOnCarriage, leadScrewKept, noKit } from './screw.ts';

const oneBelt = any(all(beltOnCarriage, not(beltOnCross)), all(beltOnCross, not(beltOnCarriage)));
const inHand = ['bracket-drawings', 'incoming-inspection'] as const;

/** What is made on the lathe before it comes apart. */
export const makeTasks: readonly Task[] = [
  {
    id: 'bore-bearing-seats',
    subsystem: 'carriage',
    stage: 'make-first',
    name: 'Bore and face the seats for the screw bearings',
    hours: [2, 4, 9],
    when: any(
      is('carriage-screw-ends', 'made-angular-block', 'both-ends-held'),
      is('cross-screw-hold', 'made-cross-block'),
    ),
    after: [...inHand],
    tools: 'Lathe, four-jaw chuck, bore gauge',
    lathe: 'cutting',
    undo: 'can-be-undone',
    test: 'The bearing slides in with a light push; the shoulder is square within 0.01 mm.',
    safety:
      'Four-jaw tightened on all jaws, tool at centre height, key out, turned round once by hand before power, no gloves.',
    extra: [
      {
        id: 'extra-bore-bearing-seats-carriage',
        when: is('carriage-screw-ends', 'made-angular-block'),
        hours: [2, 4, 5],
        why: 'the carriage block is squared, bored and given its preload ring',
      },
      {
        id: 'extra-bore-bearing-seats-both-ends',
        when: is('carriage-screw-ends', 'both-ends-held'),
        hours: [4, 7, 12],
        why: 'two blocks are bored to the same height',
      },
      {
        id: 'extra-bore-bearing-seats-cross',
        when: is('cross-screw-hold', 'made-cross-block'),
        hours: [2, 4, 5],
        why: 'the cross-slide block is squared, bored and given its preload ring',
      },
    ],
  },
  {
    id: 'bore-pulleys',
    subsystem: 'carriage',
    stage: 'make-first',
    name: 'Bore the pulleys to their shafts; fit keys or clamp hubs',
    hours: [1.5, 3, 6],
    when: any(beltOnCarriage, beltOnCross),
    after: ['incoming-inspection'],
    tools: 'Lathe, reamers, indicator',
    lathe: 'cutting',
    undo: 'can-be-undone',
    test: 'Run-out at the teeth under 0.05 mm; no grub screw on a bare round shaft.',
    safety: 'Hold small parts in the right chuck, tool at centre height, key out, eyes covered, no gloves.',
    scale: [{ when: oneBelt, by: 0.5, why: 'one belt drive only' }],
  },
  {
    id: 'turn-screw-ends',
    subsystem: 'carriage',
    stage: 'make-first',
    name: 'Turn the ends of the carriage screw',
    hours: [5, 10, 20],
    when: is('carriage-screw-machining', 'turned-here-ends'),
    after: ['incoming-inspection', 'screw-drawings'],
    tools: 'Carbide or boron-nitride inserts, steady, sleeve for the nut, micrometer',
    lathe: 'cutting',
    undo: 'cannot-be-undone',
    test: 'Seats to the fit of the bearing, stub true within 0.02 mm; the nut never left screw or sleeve.',
    safety:
      'Support a long screw behind the spindle in a tube or steady. Hard chips fly: guard shut, eyes covered.',
  },
  {
    id: 'carriage-brackets',
    subsystem: 'carriage',
    stage: 'make-first',
    name: 'Make the carriage brackets: motor plate, ends, nut',
    hours: [5.5, 11, 22],
    when: asked('carriage-drive'),
    after: [...inHand],
    tools: 'Drill press or mill, lathe for the bores, transfer punches',
    lathe: 'cutting',
    undo: 'can-be-undone',
    test: 'Bolted together on the bench the bores line up within 0.05 mm; slots or shims leave 1 mm each way.',
    safety:
      'Clamp the part before you drill it: a drill grabs as it breaks through. Eyes covered, iron dust to the vacuum, no gloves.',
    extra: [
      {
        id: 'extra-carriage-brackets-rear-screw',
        when: all(is('carriage-drive', 'ball-screw-back'), noKit),
        hours: [1, 3, 6],
        why: 'a tongue has to reach from the saddle to the nut behind the bed',
      },
      {
        id: 'extra-carriage-brackets-twin-nuts',
        when: all(is('carriage-drive', 'sliding-screw'), noKit),
        hours: [1.5, 4, 8],
        why: 'the bracket takes two nuts that are set against each other',
      },
      {
        id: 'extra-carriage-brackets-rack',
        when: all(is('carriage-drive', 'rack-pinion'), noKit),
        hours: [2, 4, 10],
        why: 'gearbox and motor hang on the apron',
      },
      {
        id: 'extra-carriage-brackets-apron-plate',
        when: all(is('apron', 'replace-apron'), noKit),
        hours: [2.5, 5, 10],
        why: 'the plate that replaces the apron is made',
      },
      {
        id: 'extra-carriage-brackets-gearbox',
        when: is('carriage-coupling', 'carriage-gearbox'),
        hours: [1, 3, 7],
        why: 'the gearbox wants a plate bored in line',
      },
    ],
    scale: [
      { when: leadScrewKept, by: 0.4, why: 'only a motor plate: the old screw keeps its brackets' },
      { when: leadScrewSynchroniser, by: 0.7, why: 'a flat plate with slots, for light work' },
      { when: is('carriage-screw-ends', 'one-end-held'), by: 0.9, why: 'no bracket at the far end' },
      { when: is('carriage-coupling', 'carriage-direct'), by: 0.92, why: 'no tensioner and no guard' },
    ],
  },
];
