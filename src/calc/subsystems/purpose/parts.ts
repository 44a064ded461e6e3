import type { Part } from '../../core/part.ts';
import { clampedBrackets } from './paths.ts';

export const parts: readonly Part[] = [
  {
    id: 'clamp-bracket-stock',
    subsystem: 'purpose',
    name: 'Plate and bar for brackets that clamp',
    note: 'Extra metal for brackets that grip the castings and use the holes that are there. Aluminium or steel, 12 to 20 mm.',
    unit: 'lot',
    combine: 'most',
    scaled: true,
    needs: [
      {
        when: clampedBrackets,
        qty: 1,
        why: 'everything has to bolt off again, so the brackets clamp instead of being screwed into castings',
      },
    ],
  },
];
