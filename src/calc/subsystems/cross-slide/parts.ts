import { all, is } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';
import { compoundParts } from './parts-compound.ts';
import { screwParts } from './parts-screws.ts';
import { beltOnCross, noKit } from './screw.ts';

const ends: readonly Part[] = [
  {
    id: 'end-block-cross',
    subsystem: 'cross-slide',
    name: 'Bearing block for the cross screw (fixed end)',
    note: 'Check its centre height, 25 to 30 mm, against your slide.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    spares: 'A spare bearing pair.',
    inspect: 'End play: push and pull with an indicator. Over 0.01 mm, change the bearings.',
    stage: 'make-first',
    needs: [
      {
        when: all(is('cross-screw-hold', 'bought-cross-block'), noKit),
        qty: 1,
        why: 'takes the push of the cross screw',
      },
    ],
  },
  {
    id: 'bearings-cross',
    subsystem: 'cross-slide',
    name: 'Matched bearing pair for the cross screw',
    note: 'Angular contact, good grade, small size.',
    unit: 'pair',
    combine: 'most',
    scaled: true,
    stage: 'make-first',
    needs: [{ when: is('cross-screw-hold', 'made-cross-block'), qty: 1, why: 'for the block you bore' }],
  },
  {
    id: 'thrust-washers-cross',
    subsystem: 'cross-slide',
    name: 'Needle thrust bearings and washers, two sets',
    note: 'One on each side of the collar; the second set is the spare.',
    unit: 'set',
    combine: 'most',
    needs: [
      {
        when: is('cross-screw-hold', 'original-bracket'),
        qty: 1,
        why: 'takes the play out of the bracket it has',
      },
    ],
  },
  {
    id: 'belt-drive-cross',
    subsystem: 'cross-slide',
    name: 'Toothed belt and two pulleys for the cross slide',
    note: 'Both pulleys bored to their shafts, 5 mm pitch, 15 mm wide (3 mm pitch does on a small lathe).',
    unit: 'set',
    combine: 'most',
    scaled: true,
    spares: 'A spare belt.',
    inspect: 'Bores within 0.01 mm of the shafts.',
    stage: 'make-first',
    needs: [
      { when: all(beltOnCross, noKit), qty: 1, why: 'drives the cross screw from the motor beside it' },
    ],
  },
  {
    id: 'clamp-hub-cross',
    subsystem: 'cross-slide',
    name: 'Clamping hub for a plain shaft, cross slide',
    note: 'Grips all round. A grub (set) screw on a bare round shaft works loose.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: beltOnCross, qty: 1, why: 'holds the pulley on the motor shaft' }],
  },
  {
    id: 'belt-guard-cross',
    subsystem: 'cross-slide',
    name: 'Guard for the cross-slide belt',
    note: 'Sheet and fixings; no finger may reach the belt.',
    unit: 'each',
    combine: 'most',
    needs: [{ when: beltOnCross, qty: 1, why: 'covers the belt that rides with the carriage' }],
  },
  {
    id: 'coupling-cross',
    subsystem: 'cross-slide',
    name: 'Coupling without play, cross slide',
    note: 'Disc or cross type with two clamp hubs, one for each shaft size.',
    unit: 'each',
    combine: 'most',
    spares: 'A spare element.',
    inspect: 'Both bores against both shafts.',
    stage: 'make-first',
    needs: [{ when: is('cross-motor-place', 'front-direct'), qty: 1, why: 'joins motor and cross screw' }],
  },
  {
    id: 'rear-bracket-stock',
    subsystem: 'cross-slide',
    name: 'Plate and longer screw end for a motor behind',
    note: 'Bracket stock, and the extra 60 to 100 mm of screw.',
    unit: 'lot',
    combine: 'most',
    scaled: true,
    stage: 'make-first',
    needs: [
      {
        when: all(is('cross-motor-place', 'rear-belt'), noKit),
        qty: 1,
        why: 'carries the motor behind the slide',
      },
    ],
  },
];

export const parts: readonly Part[] = [...screwParts, ...ends, ...compoundParts];
