import type { PriceBook } from '../core/price-book.ts';
import { type Column, SHARED } from '../cost/edition.ts';
import { scoresToPert } from '../cost/pert.ts';
import { BUILDS, stratifiedScores } from '../cost/strata.ts';

const DAYS_A_WEEK = 7;
const sharedWeight = Math.sqrt(SHARED);
const ownWeight = Math.sqrt(1 - SHARED);

interface BookLeads {
  readonly post: Float64Array;
  readonly byPart: Map<string, Column>;
}

const books = new WeakMap<PriceBook, BookLeads>();

function leadsIn(book: PriceBook): BookLeads {
  const known = books.get(book);
  if (known) return known;
  const made = { post: stratifiedScores(book.seed, 'post'), byPart: new Map<string, Column>() };
  books.set(book, made);
  return made;
}

/**
 * Weeks from order to door of a part in each of the builds. Slow weeks at the border or in the post are common to all
 * parts: one factor with the weight that prices and hours have. Made at first use and kept with the edition.
 */
export function leadsOf(book: PriceBook, part: string): Column {
  const { post, byPart } = leadsIn(book);
  const known = byPart.get(part);
  if (known) return known;
  const column = stratifiedScores(book.seed, `lead ${part}`);
  for (let build = 0; build < BUILDS; build += 1)
    column[build] = sharedWeight * post[build]! + ownWeight * column[build]!;
  scoresToPert(column, book.parts[part]!.leadDays);
  for (let build = 0; build < BUILDS; build += 1) column[build]! /= DAYS_A_WEEK;
  byPart.set(part, column);
  return column;
}
