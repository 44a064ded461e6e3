import type { Part } from '../../core/part.ts';
import { cabinetParts } from './parts-cabinet.ts';
import { cableParts } from './parts-cable.ts';
import { guardingParts } from './parts-guarding.ts';
import { mainsParts } from './parts-mains.ts';
import { senseParts } from './parts-sense.ts';

export const parts: readonly Part[] = [
  ...mainsParts,
  ...cabinetParts,
  ...cableParts,
  ...senseParts,
  ...guardingParts,
];
