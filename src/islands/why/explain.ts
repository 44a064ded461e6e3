import type { Path } from '../../calc/core/path.ts';
import { type Asked, whyNumber } from '../../calc/why-number.ts';
import { currentEdition, editionByName } from '../../content/edition.ts';
import type { Answer } from './load.ts';

/** The explanation at the prices that the path names; an edition that we do not have gives today's. */
export function explained(path: Path, asked: Asked): Omit<Answer, 'equations'> {
  const book = editionByName(path.edition) ?? currentEdition;
  return {
    explanation: whyNumber(path, book, asked),
    edition: { id: book.edition, date: book.date },
  };
}
