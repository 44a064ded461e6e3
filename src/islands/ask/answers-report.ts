import { evaluate } from '../../calc/evaluate.ts';
import { currentEdition } from '../../content/edition.ts';
import type { WorkedOut } from './answers.ts';
import { bookOf } from './book-of.ts';

/** The whole report of a path, and its typical sum at today's prices. */
export const answers: WorkedOut<'report' | 'today-money'> = {
  report: (path) => evaluate(path, bookOf(path)),
  'today-money': (path) => evaluate({ ...path, edition: currentEdition.edition }, currentEdition).money.p50,
};
