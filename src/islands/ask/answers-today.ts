import { evaluate } from '../../calc/evaluate.ts';
import { currentEdition } from '../../content/edition.ts';
import type { WorkedOut } from './answers.ts';

export const answers: WorkedOut<'today-money'> = {
  'today-money': (path) => evaluate({ ...path, edition: currentEdition.edition }, currentEdition).money.p50,
};
