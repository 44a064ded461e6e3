import type { Sentence } from '../../calc/choosing.ts';
import { toShown } from './currency.ts';
import { signed, significant } from './format.ts';

/** A sentence of the trade with its amounts in the shown currency; two figures, as every guess. */
export const sentenceText = (sentence: Sentence): string =>
  sentence
    .map((piece) => (typeof piece === 'string' ? piece : signed(significant(toShown(piece.dollars), 2), 1)))
    .join('');
