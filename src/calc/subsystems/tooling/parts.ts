import type { Part } from '../../core/part.ts';
import { toolParts } from './parts-tools.ts';
import { workParts } from './parts-work.ts';

export const parts: readonly Part[] = [...toolParts, ...workParts];
