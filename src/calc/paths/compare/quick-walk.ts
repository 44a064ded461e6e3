import { answerMasks, choose } from '../../choices/choose.ts';
import { decisionPosition, newState, type State, unchosen } from '../../choices/state.ts';
import type { Path } from '../../core/path.ts';
import type { PriceBook } from '../../core/price-book.ts';
import { allowanceOf } from '../../cost/builds.ts';
import { editionOf } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import { waysFrom } from '../../cost/ways.ts';
import { machineOf } from '../../facts.ts';
import { measure } from '../../measures.ts';
import { type CarriedSums, carriedSums } from './carried-sums.ts';
import { type Piece, taking } from './pieces.ts';
import { type Typical, typicalOf, typicalOfPath, type Walk } from './walk.ts';

/** A lathe with its drawer and prices, on which plans differ by their answers alone. */
interface Ground {
  readonly plan: State;
  readonly sums: CarriedSums;
  readonly seed: number;
  /** Of the mixture before, where it was one plan: what it came to. */
  last: Typical | undefined;
}

const money = new Float64Array(BUILDS);
const hours = new Float64Array(BUILDS);
/** Grounds that are kept; one takes about as long to make as a path to work out. */
const KEPT_AT_MOST = 32;

function groundOf(path: Path, book: PriceBook, given: Int32Array): Ground {
  const machine = machineOf(path.size, path.facts);
  const plan = newState(machine, measure);
  choose(plan, given);
  const state = unchosen(plan, measure);
  state.masks.set(plan.masks);
  const sums = carriedSums({ state, machine, path, book }, editionOf(book));
  return { plan, sums, seed: book.seed, last: undefined };
}

/** The typical figures of the answers on a ground, each way of answering what is open in its own builds. */
function typicalOn(ground: Ground, given: Int32Array): Typical {
  const { plan, sums, seed } = ground;
  const status = choose(plan, given);
  const ways = waysFrom(given, { state: plan, status }, seed);
  const whole = ways.length === 1;
  const known = whole ? ground.last : undefined;
  let moved = { money: true, hours: true };
  const left = new Set(ways);
  for (const { state } of ways) {
    const here = [...left].filter((way) => way.state === state);
    if (here.length === 0) continue;
    moved = sums.moveTo(state.masks);
    for (const way of here) {
      left.delete(way);
      if (!known || moved.money) sums.fillMoney(money, way.from, way.to);
      if (!known || moved.hours) sums.fillHours(hours, way.from, way.to);
    }
  }
  const typical = {
    money: known && !moved.money ? known.money : typicalOf(money),
    hours: known && !moved.hours ? known.hours : typicalOf(hours),
  };
  ground.last = whole ? typical : undefined;
  return typical;
}

/** Totals are sums of columns where nothing is quoted or bought and no flat allowance stands. */
const isPlainSum = (path: Path): boolean =>
  Object.keys(path.purchases ?? {}).length === 0 && allowanceOf(path) === undefined;

/**
 * The same figures as the plain walk, from the columns that change alone. What is no answer, such as the drawer, makes
 * grounds of its own; where a total is more than a sum of columns, a mixture is worked out whole.
 */
export function quickWalk(
  a: Path,
  b: Path,
  pieces: readonly Piece[],
  bookOf: (edition: string) => PriceBook,
): Walk {
  const [ours, theirs] = [answerMasks(a.answers), answerMasks(b.answers)];
  const taken = pieces.map(() => false);
  const given = theirs.slice();
  const grounds = new Map<string, Ground>();
  let path = b;

  const groundHere = (): Ground => {
    const key = pieces.map(({ kind }, at) => (kind !== 'answer' && taken[at] ? '1' : '0')).join('');
    const known = grounds.get(key);
    if (known) return known;
    if (grounds.size >= KEPT_AT_MOST) grounds.clear();
    const made = groundOf(path, bookOf(path.edition), given);
    grounds.set(key, made);
    return made;
  };

  return {
    turn: (at) => {
      const piece = pieces[at]!;
      taken[at] = !taken[at];
      path = taking(path, taken[at] ? a : b, piece);
      if (piece.kind !== 'answer') return;
      const position = decisionPosition(piece.decision);
      given[position] = (taken[at] ? ours : theirs)[position]!;
    },
    typical: () =>
      isPlainSum(path) ? typicalOn(groundHere(), given) : typicalOfPath(path, bookOf(path.edition)),
  };
}
