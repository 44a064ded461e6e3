import type { Path } from '../../core/path.ts';
import type { PriceBook } from '../../core/price-book.ts';
import { type Piece, piecesOf } from './pieces.ts';
import { quickWalk } from './quick-walk.ts';
import { exactly, MOST_EXACT, type SharedOut, sampled, wholeShares } from './shares.ts';

/** Typical figures to the cent and to the hundredth of an hour: `a` less `b` is `difference`, exactly. */
export interface TypicalDifference {
  readonly a: number;
  readonly b: number;
  readonly difference: number;
}

/** What one piece does to the difference between two paths. */
export interface Share {
  readonly piece: Piece;
  /** Dollars and hours of the difference, to the cent and the hundredth; below zero: it makes the first path less. */
  readonly money: number;
  readonly hours: number;
  /** False where it changed neither in any order that was counted. */
  readonly moves: boolean;
  /** Standard errors of a sample; undefined where every order was counted. */
  readonly error: { readonly money: number; readonly hours: number } | undefined;
}

/** Why the first path is dearer or cheaper, longer or shorter than the second. Plain data. */
export interface WhyDiffer {
  /** The middle of the builds. */
  readonly money: TypicalDifference;
  readonly hours: TypicalDifference;
  /** In the order of the guide; money and hours each add up to the difference exactly. */
  readonly shares: readonly Share[];
  /** Every order was counted; otherwise the shares are an approximation from `orders` of them. */
  readonly exact: boolean;
  readonly orders: number;
}

const HUNDREDTHS = 100;

const differenceOf = (a: number, b: number): TypicalDifference => ({
  a: a / HUNDREDTHS,
  b: b / HUNDREDTHS,
  difference: (a - b) / HUNDREDTHS,
});

function sharesFrom(pieces: readonly Piece[], { gains, orders, errors, moves }: SharedOut): Share[] {
  const money = wholeShares(gains.money, orders);
  const hours = wholeShares(gains.hours, orders);
  return pieces.map((piece, at) => ({
    piece,
    money: money[at]! / HUNDREDTHS,
    hours: hours[at]! / HUNDREDTHS,
    moves: moves[at]!,
    error: errors && { money: errors.money[at]! / HUNDREDTHS, hours: errors.hours[at]! / HUNDREDTHS },
  }));
}

/**
 * The difference between the typical figures of two paths, shared out over what their owners answered differently, so
 * that no order of the answers counts more than another. A mixture that the rules forbid is planned like any path: a
 * clash is settled by the trade. Questions left open whose planned answer moves along count with what moves them.
 */
export function whyDiffer(a: Path, b: Path, bookOf: (edition: string) => PriceBook): WhyDiffer {
  const pieces = piecesOf(a, b);
  const walk = quickWalk(a, b, pieces, bookOf);
  const exact = pieces.length <= MOST_EXACT;
  const shared = exact ? exactly(walk, pieces.length) : sampled(walk, pieces.length);
  const { from, to, orders } = shared;
  return {
    money: differenceOf(to.money, from.money),
    hours: differenceOf(to.hours, from.hours),
    shares: sharesFrom(pieces, shared),
    exact,
    orders,
  };
}
