import type { PriceBook } from '../calc/core/price-book.ts';
import book202611 from './prices/2026-11.json' with { type: 'json' };
import book202612 from './prices/2026-12.json' with { type: 'json' };

/** Every released edition of prices, newest first. A released edition is never edited: a test holds its hash. */
export const editions: readonly PriceBook[] = [
  book202612 as unknown as PriceBook,
  book202611 as unknown as PriceBook,
];

export const currentEdition: PriceBook = editions[0]!;

/** The edition of that name, or undefined. */
export const editionByName = (name: string): PriceBook | undefined =>
  editions.find((book) => book.edition === name);
