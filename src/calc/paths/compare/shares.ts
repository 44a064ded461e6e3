import { shuffled } from '../../cost/strata.ts';
import { gainsOverOrders } from '../../formulas/sharing.ts';
import type { Typical, Walk } from './walk.ts';

/** Pieces that may differ for every order to be counted: 256 mixtures stand for 40,320 orders. */
export const MOST_EXACT = 8;

/** What each piece adds, summed over a number of orders. Whole cents or hundredths of an hour. */
export interface Gains {
  readonly money: readonly number[];
  readonly hours: readonly number[];
}

export interface SharedOut {
  readonly gains: Gains;
  /** Orders that the gains are summed over. */
  readonly orders: number;
  /** Standard error of a mean gain; undefined where every order was counted. */
  readonly errors: Gains | undefined;
  /** By piece: whether it moved money or hours in any order. */
  readonly moves: readonly boolean[];
  readonly from: Typical;
  readonly to: Typical;
}

/** How many bits at the end of a count are zero: a count in Gray code turns that one. */
const turnedAt = (count: number): number => 31 - Math.clz32(count & -count);

/**
 * What every mixture comes to, one piece turned at a step (Gray code); bit i: piece i as the first path has it. The
 * first piece in turn is turned at every second step, the last but once: what is least work comes first.
 */
export function everyMixture(walk: Walk, pieces: number): Typical[] {
  const inTurn = Array.from({ length: pieces }, (_, at) => at).sort(
    (p, q) => walk.weights[p]! - walk.weights[q]!,
  );
  const values: Typical[] = [walk.typical()];
  let mixture = 0;
  for (let count = 1; count < 1 << pieces; count += 1) {
    const piece = inTurn[turnedAt(count)]!;
    walk.turn(piece);
    mixture ^= 1 << piece;
    values[mixture] = walk.typical();
  }
  return values;
}

/** Every order counted. */
export function exactly(walk: Walk, pieces: number): SharedOut {
  const values = everyMixture(walk, pieces);
  const of = (kind: keyof Typical): number[] => values.map((each) => each[kind]);
  const moves = Array.from({ length: pieces }, (_, piece) =>
    values.some((value, mixture) => {
      const other = values[mixture ^ (1 << piece)]!;
      return value.money !== other.money || value.hours !== other.hours;
    }),
  );
  return {
    gains: { money: gainsOverOrders(of('money')), hours: gainsOverOrders(of('hours')) },
    orders: Array.from({ length: pieces }, (_, at) => at + 1).reduce((product, each) => product * each, 1),
    errors: undefined,
    moves,
    from: values[0]!,
    to: values.at(-1)!,
  };
}

/** What the order of a sample is drawn from, whatever the edition: the same paths give the same shares. */
const SEED = 1953;

/** Orders of a sample, there and back: as many as the work allows, and never fewer or more than this. */
const PAIRS = { least: 4, most: 32 } as const;
const WORK = 12_000;

const pairsFor = (pieces: number, work: number): number =>
  Math.min(PAIRS.most, Math.max(PAIRS.least, Math.floor(WORK / (2 * pieces * work))));

/** Sums that a sample keeps of one kind: of the gains, and of the squares of the mean of each pair of orders. */
interface Sums {
  readonly gains: number[];
  readonly squares: number[];
}

const noSums = (pieces: number): Sums => ({ gains: Array(pieces).fill(0), squares: Array(pieces).fill(0) });

/** Adds a pair of orders; the way down takes off what the way up added. */
function addPair({ gains, squares }: Sums, up: readonly number[], down: readonly number[]): void {
  for (let piece = 0; piece < up.length; piece += 1) {
    const both = up[piece]! - down[piece]!;
    gains[piece]! += both;
    squares[piece]! += (both / 2) ** 2;
  }
}

/**
 * A sample of the orders, each with its reverse: a walk up an order turns the pieces to the first path, and the same
 * walk down again turns them back, which is the reverse order. Every order adds up to the whole difference, and
 * exchanging the paths turns every sign.
 * Sources: Castro, Gómez and Tejada, Polynomial calculation of the Shapley value based on sampling, Computers and
 * Operations Research 36, 2009; the reverse order: Mitchell, Cooper, Frank and Holmes, Sampling permutations for Shapley
 * value estimation, Journal of Machine Learning Research 23, 2022.
 */
export function sampled(walk: Walk, pieces: number): SharedOut {
  const sums = { money: noSums(pieces), hours: noSums(pieces) };
  const moves: boolean[] = Array(pieces).fill(false);
  const from = walk.typical();
  let work = walk.work();
  let [to, pairs, most] = [from, 0, 1];
  while (pairs < most) {
    const order = shuffled(pieces, SEED, `order ${pairs}`);
    const up = climb(walk, order, from);
    if (pairs === 0) work = Math.max(work, walk.work());
    const down = climb(walk, order, up.end);
    addPair(sums.money, up.money, down.money);
    addPair(sums.hours, up.hours, down.hours);
    for (let piece = 0; piece < pieces; piece += 1)
      moves[piece] ||= movesIn(up, piece) || movesIn(down, piece);
    [to, pairs, most] = [up.end, pairs + 1, pairsFor(pieces, work)];
  }
  const errors = { money: errorsOf(sums.money, pairs), hours: errorsOf(sums.hours, pairs) };
  const gains = { money: sums.money.gains, hours: sums.hours.gains };
  return { gains, orders: 2 * pairs, errors, moves, from, to };
}

interface Climb extends Gains {
  readonly end: Typical;
}

const movesIn = ({ money, hours }: Gains, piece: number): boolean => money[piece] !== 0 || hours[piece] !== 0;

/** Turns every piece in an order; what each turn added, and where it ended. */
function climb(walk: Walk, order: Int32Array, start: Typical): Climb {
  const [money, hours]: [number[], number[]] = [[], []];
  let before = start;
  for (const piece of order) {
    walk.turn(piece);
    const after = walk.typical();
    money[piece] = after.money - before.money;
    hours[piece] = after.hours - before.hours;
    before = after;
  }
  return { money, hours, end: before };
}

/** Standard error of the mean of independent pairs. */
const errorsOf = ({ gains, squares }: Sums, pairs: number): number[] =>
  gains.map((sum, piece) => {
    const mean = sum / (2 * pairs);
    return Math.sqrt(Math.max(0, squares[piece]! / pairs - mean * mean) / Math.max(1, pairs - 1));
  });

/**
 * Whole shares of gains that were summed over so many orders, by largest remainder: they add up to the whole exactly.
 * The rounding is the same with all signs turned.
 */
export function wholeShares(gains: readonly number[], orders: number): number[] {
  const total = gains.reduce((sum, gain) => sum + gain, 0);
  const sign = (total || gains.find((gain) => gain !== 0) || 0) < 0 ? -1 : 1;
  const parts = gains.map((gain, at) => {
    const rest = (((sign * gain) % orders) + orders) % orders;
    return { at, rest, share: (sign * gain - rest) / orders };
  });
  const left = parts.reduce((sum, { rest }) => sum + rest, 0) / orders;
  const shares = parts.map(({ share }) => share);
  parts.sort((p, q) => q.rest - p.rest || p.at - q.at);
  for (const { at } of parts.slice(0, left)) shares[at]! += 1;
  return shares.map((share) => sign * share + 0);
}
