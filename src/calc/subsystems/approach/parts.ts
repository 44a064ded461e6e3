import type { Part } from '../../core/part.ts';
import { bracketParts } from './parts-brackets.ts';
import { machineParts } from './parts-machines.ts';
import { shelfParts } from './parts-shelf.ts';
import { shopToolParts } from './parts-shop-tools.ts';
import { spareParts } from './parts-spares.ts';

export const parts: readonly Part[] = [
  ...bracketParts,
  ...machineParts,
  ...shelfParts,
  ...spareParts,
  ...shopToolParts,
];
