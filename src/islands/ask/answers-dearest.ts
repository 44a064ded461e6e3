import { worstBuilds } from '../../calc/worst-builds.ts';
import type { WorkedOut } from './answers.ts';
import { bookOf } from './book-of.ts';

const ALL = 20;

/** The twenty ways one by one, dearest first. */
export const answers: WorkedOut<'dearest'> = { dearest: (path) => worstBuilds(path, bookOf(path), ALL) };
