import type { Part } from '../../core/part.ts';
import { apronParts } from './parts-apron.ts';
import { endParts } from './parts-ends.ts';
import { screwParts } from './parts-screw.ts';

export const parts: readonly Part[] = [...screwParts, ...endParts, ...apronParts];
