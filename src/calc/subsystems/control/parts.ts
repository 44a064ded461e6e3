import type { Part } from '../../core/part.ts';
import { controllerParts } from './parts-controllers.ts';
import { handParts } from './parts-hands.ts';
import { sharingParts } from './parts-sharing.ts';

export const parts: readonly Part[] = [...controllerParts, ...handParts, ...sharingParts];
