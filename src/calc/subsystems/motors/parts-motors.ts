import { all, always, type Condition, is, not } from '../../core/condition.ts';
import type { Need, Part } from '../../core/part.ts';
import { carriageDriven, crossDriven } from './driven.ts';

const smallOnCarriage = all(carriageDriven, is('motor-size', 'face-57-both'));
const smallOnCross = all(crossDriven, is('motor-size', 'face-57-both', 'face-57-and-86'));
const largeOnCarriage = all(carriageDriven, is('motor-size', 'face-57-and-86', 'face-86-both'));
const largeOnCross = all(crossDriven, is('motor-size', 'face-86-both'));

/** One for the carriage and one for the cross slide where that slide is driven. */
const perSlide = (kind: Condition, carriage: Condition, cross: Condition): Need[] => [
  { when: all(kind, carriage), qty: 1, why: 'one on the carriage' },
  { when: all(kind, cross), qty: 1, why: 'one on the cross slide' },
];

export const perSmall = (kind: Condition): Need[] => perSlide(kind, smallOnCarriage, smallOnCross);
export const perLarge = (kind: Condition): Need[] => perSlide(kind, largeOnCarriage, largeOnCross);
export const perDriven = (kind: Condition): Need[] => perSlide(kind, carriageDriven, crossDriven);

const openLoop = is('axis-motor', 'open-loop-stepper');
const separate = all(openLoop, is('drives', 'separate-drives'));

export const motorParts: readonly Part[] = [
  {
    id: 'stepper-57',
    subsystem: 'motors',
    name: 'Plain stepper, 57 mm face, 2 to 3 N·m',
    note: 'Compare by torque at speed, not by holding torque: low inductance is faster. Note the shaft, 6.35 or 8 mm.',
    unit: 'each',
    combine: 'sum',
    inspect: 'Shaft diameter to 0.01 mm; turns smoothly by hand with its wires apart.',
    needs: perSmall(openLoop),
  },
  {
    id: 'stepper-86',
    subsystem: 'motors',
    name: 'Plain stepper, 86 mm face, 4.5 to 8 N·m',
    note: 'Take the shorter one with the lower inductance. Shafts of 12.7 and 14 mm with a key are both common.',
    unit: 'each',
    combine: 'sum',
    inspect: 'Shaft diameter, key and register (73 mm) before the pulley is bored.',
    needs: perLarge(openLoop),
  },
  {
    id: 'drive-50v',
    subsystem: 'motors',
    name: 'Step drive, up to 50 V, 4 to 5.6 A',
    note: 'For 57 mm steppers, fed with 36 to 40 V. Isolated inputs for 5 V or 24 V: check which.',
    unit: 'each',
    combine: 'sum',
    spares: 'One spare for the build: it is the part most often killed.',
    keep: [
      { when: always, qty: 1, why: 'the part most often killed; with one on the shelf the build goes on' },
    ],
    needs: perSmall(separate),
  },
  {
    id: 'drive-80v',
    subsystem: 'motors',
    name: 'Step drive, up to 80 V, 7 to 8 A',
    note: 'For 86 mm steppers, fed with 60 to 70 V at most.',
    unit: 'each',
    combine: 'sum',
    spares: 'One spare for the build.',
    keep: [
      { when: always, qty: 1, why: 'the part most often killed; with one on the shelf the build goes on' },
    ],
    needs: perLarge(separate),
  },
  {
    id: 'drive-board',
    subsystem: 'motors',
    name: 'Board with two to four step drives',
    note: 'It takes the place of the separate drives. Look for isolated inputs and a stated step timing.',
    unit: 'each',
    combine: 'most',
    spares: 'A whole board, if it is a cheap one.',
    needs: [
      { when: all(openLoop, is('drives', 'multi-axis-board')), qty: 1, why: 'one board for all motors' },
    ],
  },
  {
    id: 'built-in-drive-surcharge',
    subsystem: 'motors',
    name: 'Drive built into the motor, added price',
    note: 'What the piece with its drive inside costs more than the motor or set that the plan lists.',
    unit: 'each',
    combine: 'sum',
    needs: perDriven(is('drives', 'built-in-drives')),
  },
  {
    id: 'crank-kit',
    subsystem: 'motors',
    name: 'Motor shaft out at both ends, with a folding crank',
    note: 'For hand use with the drives off. The crank must come off or fold: it whirls under power.',
    unit: 'each',
    combine: 'sum',
    needs: [
      { when: all(is('hand-use', 'hand-cranks'), carriageDriven), qty: 1, why: 'a crank for the carriage' },
      {
        when: all(is('hand-use', 'hand-cranks'), crossDriven, not(is('cross-motor-place', 'rear-belt'))),
        qty: 1,
        why: 'a crank for the cross slide; with the motor behind, its handwheel stays on the screw',
      },
    ],
  },
];
