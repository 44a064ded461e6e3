import { is } from '../../core/condition.ts';
import type { Part } from '../../core/part.ts';

export const compoundParts: readonly Part[] = [
  {
    id: 'riser-block',
    subsystem: 'cross-slide',
    name: 'Block in place of the compound',
    note: 'Cast iron or steel, faced to height, with the bolt circle of the swivel.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    needs: [{ when: is('compound', 'riser-block'), qty: 1, why: 'carries the tool post at the old height' }],
  },
  {
    id: 'slotted-riser-plate-part',
    subsystem: 'cross-slide',
    name: 'Slotted plate in place of the compound',
    note: 'Iron or steel with two T-slots, faced to height.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    needs: [
      { when: is('compound', 'slotted-riser-plate'), qty: 1, why: 'carries a post and tools beside it' },
    ],
  },
  {
    id: 'slotted-slide-plate-part',
    subsystem: 'cross-slide',
    name: 'Long slotted cross-slide plate',
    note: 'Bought machined, or stock and outside machining.',
    unit: 'each',
    combine: 'most',
    scaled: true,
    needs: [{ when: is('compound', 'slotted-slide-plate'), qty: 1, why: 'carries the tools in line' }],
  },
];
