import type { Path } from '../../core/path.ts';
import type { PriceBook } from '../../core/price-book.ts';
import { oneOf } from '../../cost/buckets.ts';
import type { Totals } from '../../cost/builds.ts';
import { type Column, editionOf } from '../../cost/edition.ts';
import { ordersOf } from '../../cost/orders.ts';
import { totalsOf } from '../../cost/totals.ts';
import { wantedOf } from '../../cost/wanted.ts';
import { planState, type Way, waysOf } from '../../cost/ways.ts';
import { machineOf } from '../../facts.ts';
import { type Piece, taking } from './pieces.ts';

/** Typical money and hours, whole cents and hundredths of an hour. */
export interface Typical {
  readonly money: number;
  readonly hours: number;
}

/** A mixture of two paths that changes one piece at a time. It begins with everything as the second path has it. */
export interface Walk {
  /** By piece: how much work it is to turn it. */
  readonly weights: readonly number[];
  /** Gives one piece the other way round. */
  readonly turn: (piece: number) => void;
  readonly typical: () => Typical;
  /** How much work the mixture at hand is, as a multiple of one plan that is carried over from another. */
  readonly work: () => number;
}

/** Hours are sums of fractions: what lies a millionth under a half is a half. */
const FORGIVEN = 1e-6;

/** The middle of the builds in whole hundredths. */
export const typicalOf = (column: Column): number => Math.floor(oneOf(column, 0.5) + 0.5 + FORGIVEN);

function totalsOfPath(path: Path, book: PriceBook): Totals {
  const machine = machineOf(path.size, path.facts);
  const edition = editionOf(book);
  const plan = planState(path, machine);
  const orders = ordersOf(wantedOf(plan.state, machine, book), path, edition);
  return totalsOf(waysOf(path, plan, book.seed), machine, path, edition, orders);
}

export function typicalOfPath(path: Path, book: PriceBook): Typical {
  const { money, hours } = totalsOfPath(path, book);
  return { money: typicalOf(money), hours: typicalOf(hours) };
}

/** What a plan takes that is worked out whole. */
const WHOLE = 10;

export const plansIn = (ways: readonly Way[]): number => new Set(ways.map(({ state }) => state)).size;

export function plainWork(path: Path, { seed }: PriceBook): number {
  return WHOLE * plansIn(waysOf(path, planState(path, machineOf(path.size, path.facts)), seed));
}

/** Every mixture worked out like any path. */
export function plainWalk(
  a: Path,
  b: Path,
  pieces: readonly Piece[],
  bookOf: (edition: string) => PriceBook,
): Walk {
  const taken = pieces.map(() => false);
  let path = b;
  return {
    weights: pieces.map(() => 1),
    turn: (piece) => {
      taken[piece] = !taken[piece];
      path = taking(path, taken[piece] ? a : b, pieces[piece]!);
    },
    typical: () => typicalOfPath(path, bookOf(path.edition)),
    work: () => plainWork(path, bookOf(path.edition)),
  };
}
