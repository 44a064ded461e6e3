import type { NewcomerQuestion } from './newcomer.ts';

/** The rooms purpose, approach, carriage and cross-slide. */
export const questions: readonly NewcomerQuestion[] = [];
