import { all, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { fastenerCount } from './fastener-count.ts';
import { leadScrewSynchroniser, oneSlide, synchroniser, trainingMachine } from './paths.ts';

/** A lot for eight brackets and a cabinet; a synchroniser on the lead screw wants a handful of each instead. */
const wholeJob = (why: string) => [{ when: not(leadScrewSynchroniser), qty: 1, why }];

/** What every build uses up, and what is forgotten in most budgets. */
export const shelfParts: readonly Part[] = [
  {
    id: 'fasteners',
    subsystem: 'approach',
    name: 'Cap screws, washers and dowels, M4 to M10',
    note: 'About eight brackets with four screws and two dowels each. Buy an assortment, and two more of every length over 30 mm.',
    unit: 'lot',
    combine: 'most',
    spares: 'A tenth more than you count.',
    size: fastenerCount,
    needs: wholeJob('everything is bolted and dowelled'),
  },
  {
    id: 'shims-and-compounds',
    subsystem: 'approach',
    name: 'Shim stock, threadlocker, retaining compound',
    note: 'Brass or steel shim from 0.02 to 0.5 mm; medium threadlocker.',
    unit: 'lot',
    combine: 'most',
    needs: wholeJob('brackets are lined up with shims and locked'),
  },
  {
    id: 'drills-and-taps',
    subsystem: 'approach',
    name: 'Drills and taps',
    note: 'Cobalt drills for castings, spiral-point taps. Castings have hard skin.',
    unit: 'lot',
    combine: 'most',
    spares: 'More of each tapping drill and small tap: the casting breaks some.',
    needs: wholeJob('holes in castings, brackets and cabinet'),
  },
  {
    id: 'oils-and-grease',
    subsystem: 'approach',
    name: 'Cutting oil, way oil, grease for the screws, cleaner, rags',
    note: 'Way oil is not motor oil. The grease is the one that the maker of the screw names.',
    unit: 'lot',
    combine: 'most',
    needs: wholeJob('cleaning, cutting and the first filling'),
  },
  {
    id: 'practice-stock',
    subsystem: 'approach',
    name: 'Bar for tests and practice',
    note: 'Aluminium, free-cutting steel, brass and a soft plastic, 20 to 30 mm.',
    unit: 'lot',
    combine: 'most',
    stage: 'commission',
    needs: wholeJob('test bars and first programs'),
  },
  {
    id: 'handful-of-small-things',
    subsystem: 'approach',
    name: 'A handful of screws, shims, drills, oil and test bar',
    note: 'Two dozen cap screws, threadlocker, two or three drills and taps, oil, and a bar of free-cutting steel for trial threads.',
    unit: 'lot',
    combine: 'most',
    needs: [
      { when: leadScrewSynchroniser, qty: 1, why: 'two plates, a sensor and a small box are bolted on' },
    ],
  },
  {
    id: 'backup-media',
    subsystem: 'approach',
    name: 'Two sticks or cards for copies of the settings',
    note: 'One lives in the cabinet, one in another building.',
    unit: 'lot',
    combine: 'most',
    stage: 'commission',
    needs: [{ when: not(synchroniser), qty: 1, why: 'settings and programs are kept twice' }],
  },
  {
    id: 'alignment-epoxy',
    subsystem: 'approach',
    name: 'Casting epoxy, paint and masking',
    note: 'Fills the gap behind a strip or a bracket that is set by screws; paint for bare castings.',
    unit: 'lot',
    combine: 'most',
    needs: [
      {
        when: is('condition', 'slides-need-adjusting', 'spindle-bearings-too'),
        qty: 1,
        why: 'strips are bedded',
      },
    ],
  },
  {
    id: 'second-round-lot',
    subsystem: 'approach',
    name: 'Small parts and freight of a second round',
    note: 'Wire, plugs and clips used for one stage and thrown away, and parcels that come twice.',
    unit: 'lot',
    combine: 'most',
    needs: [
      {
        when: all(is('order-of-work', 'in-stages'), not(oneSlide), not(trainingMachine)),
        qty: 1,
        why: 'in stages, some wiring and some parcels happen twice',
      },
    ],
  },
];
