import type { Path } from '../../calc/core/path.ts';
import type { PriceBook } from '../../calc/core/price-book.ts';
import { currentEdition, editionByName } from '../../content/edition.ts';

/** The prices of that name; an edition that we do not have gives today's. */
export const bookNamed = (edition: string): PriceBook => editionByName(edition) ?? currentEdition;
export const bookOf = ({ edition }: Path): PriceBook => bookNamed(edition);
