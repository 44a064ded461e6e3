import type { Figure } from '../../core/figure.ts';

export const figures: readonly Figure[] = [];
