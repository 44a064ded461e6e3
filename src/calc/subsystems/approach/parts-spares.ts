import { all, any, is, not } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { leadScrewSynchroniser, newSpindleMotor, synchroniser } from './paths.ts';

const base = { subsystem: 'approach', unit: 'each' } as const;
const drillsCastings = all(not(leadScrewSynchroniser), not(is('which-lathe', 'dead-training-machine')));
/** A synchroniser on the lead screw stands still for a week without harm: the lathe works as it did before. */
const belt = (when: Part['needs'][number]['when'], where: string) => ({
  when: all(when, not(leadScrewSynchroniser)),
  qty: 1,
  why: `a belt for ${where} that jumps or tears stops the work for a week`,
});

/** Small things of which more than one is bought, because one breaks and the next is a parcel away. */
export const spareParts: readonly Part[] = [
  {
    ...base,
    id: 'tapping-drills',
    name: 'Tapping drills of the size most holes have',
    note: 'Cobalt, stub length, for M5 or M6. As many as finish every hole with 19 chances in 20, broken ones counted.',
    combine: 'most',
    inspect: 'Size on the shank, with a micrometer: the tapped hole stands or falls with it.',
    needs: [
      {
        when: drillsCastings,
        qty: { figure: 'drills-to-have' },
        why: 'holes in the castings times the chance of breaking in this iron, 95 % sure to finish',
      },
    ],
  },
  {
    ...base,
    id: 'small-taps',
    name: 'Spiral-point taps of the size most holes have',
    note: 'M5 or M6, with cutting oil and no haste. A broken tap in the bed costs an evening.',
    combine: 'most',
    inspect: 'Thread and pitch against a screw of the lot.',
    needs: [
      {
        when: drillsCastings,
        qty: { figure: 'taps-to-have' },
        why: 'threads in the castings times the chance of breaking in this iron, 95 % sure to finish',
      },
    ],
  },
  {
    ...base,
    id: 'spare-belt',
    name: 'Spare toothed belt',
    note: 'One of each length and pitch in the machine; write the number of teeth on the bag.',
    combine: 'sum',
    inspect: 'Teeth, pitch and width against the belt that is fitted.',
    needs: [
      belt(is('carriage-coupling', 'carriage-belt-1-1', 'carriage-belt-2-1'), 'the carriage'),
      belt(is('cross-motor-place', 'front-belt', 'rear-belt'), 'the cross slide'),
      belt(is('sensor-place', 'spindle-belt'), 'the spindle sensor'),
      belt(newSpindleMotor, 'the spindle'),
    ],
  },
  {
    ...base,
    id: 'spare-coupling-element',
    name: 'Spare element for a coupling',
    note: 'The part in the middle that gives way first, on purpose.',
    combine: 'sum',
    needs: [
      {
        when: all(is('carriage-coupling', 'carriage-direct', 'carriage-gearbox'), not(synchroniser)),
        qty: 1,
        why: 'the first crash of the carriage breaks it',
      },
      {
        when: all(is('cross-motor-place', 'front-direct'), not(synchroniser)),
        qty: 1,
        why: 'the first crash of the cross slide breaks it',
      },
    ],
  },
  {
    ...base,
    id: 'spare-fuses',
    unit: 'set',
    name: 'Spare fuses, five of each value',
    note: 'The very type and speed of those fitted; in a bag inside the cabinet door.',
    combine: 'most',
    needs: [
      {
        when: any(not(synchroniser), is('spindle-motor', 'three-phase-drive', 'doubler-drive')),
        qty: 1,
        why: 'first power takes a fuse or two',
      },
    ],
  },
];
