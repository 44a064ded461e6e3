import type { Part } from '../../core/part.ts';
import { motorParts } from './parts-motors.ts';
import { setParts } from './parts-sets.ts';
import { supplyParts } from './parts-supply.ts';

export const parts: readonly Part[] = [...motorParts, ...setParts, ...supplyParts];
