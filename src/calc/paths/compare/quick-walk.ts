import { answerMasks, choose } from '../../choices/choose.ts';
import { decisionPosition, newState, type State, unchosen } from '../../choices/state.ts';
import type { Path } from '../../core/path.ts';
import type { PriceBook } from '../../core/price-book.ts';
import { allowanceOf } from '../../cost/builds.ts';
import { editionOf } from '../../cost/edition.ts';
import { BUILDS } from '../../cost/strata.ts';
import { type Way, waysFrom } from '../../cost/ways.ts';
import { machineOf } from '../../facts.ts';
import { measure } from '../../measures.ts';
import { partsLookingAt, risksLookingAt, tasksLookingAt } from '../looks-at.ts';
import { CarriedSums, type Moved } from './carried-sums.ts';
import { type Piece, taking } from './pieces.ts';
import { plainWork, plansIn, type Typical, typicalOf, typicalOfPath, type Walk } from './walk.ts';

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
  const sums = new CarriedSums({ state, machine, path, book }, editionOf(book));
  return { plan, sums, seed: book.seed, last: undefined };
}

/** The builds of a mixture, each way of answering what is open in its own; which sums are not those of before. */
function fill({ sums }: Ground, ways: readonly Way[], again: boolean): Moved {
  let moved: Moved = { money: again, hours: again };
  const byState = new Map<State, Way[]>();
  for (const way of ways) byState.set(way.state, [...(byState.get(way.state) ?? []), way]);
  for (const [state, here] of byState) {
    const step = sums.moveTo(state.masks);
    moved = { money: again || step.money, hours: again || step.hours };
    for (const { from, to } of here) {
      if (moved.money) sums.fillMoney(money, from, to);
      if (moved.hours) sums.fillHours(hours, from, to);
    }
  }
  return moved;
}

const waysOn = ({ plan, seed }: Ground, given: Int32Array): Way[] =>
  waysFrom(given, { state: plan, status: choose(plan, given) }, seed);

/** The typical figures of the answers on a ground. */
function typicalOn(ground: Ground, given: Int32Array): Typical {
  const { last } = ground;
  const ways = waysOn(ground, given);
  // Only where one plan follows another does a sum that has not moved still stand for all builds.
  const known = ways.length === 1 ? last : undefined;
  const moved = fill(ground, ways, known === undefined);
  const typical = {
    money: known && !moved.money ? known.money : typicalOf(money),
    hours: known && !moved.hours ? known.hours : typicalOf(hours),
  };
  ground.last = ways.length === 1 ? typical : undefined;
  return typical;
}

/** Totals are sums of columns where nothing is quoted or bought and no flat allowance stands. */
const isPlainSum = (path: Path): boolean =>
  Object.keys(path.purchases ?? {}).length === 0 && allowanceOf(path) === undefined;

/** How much has to be counted again when a piece is turned; what is no answer makes another ground. */
function weightOf(piece: Piece): number {
  if (piece.kind !== 'answer') return Number.MAX_SAFE_INTEGER;
  const at = decisionPosition(piece.decision);
  return partsLookingAt[at]!.length + tasksLookingAt[at]!.length + risksLookingAt[at]!.length;
}

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
  const others = pieces.flatMap(({ kind }, at) => (kind === 'answer' ? [] : [at]));
  /** By what is no answer; undefined where a total is more than a sum of columns. */
  const grounds = new Map<string, Ground | undefined>();

  /** The mixture as a path of its own, made only where somebody looks at more than its answers. */
  const mixture = (): Path =>
    pieces.reduce((path, piece, at) => (taken[at] ? taking(path, a, piece) : path), b);

  const groundHere = (): Ground | undefined => {
    const key = others.map((at) => (taken[at] ? '1' : '0')).join('');
    const known = grounds.get(key);
    if (known || grounds.has(key)) return known;
    if (grounds.size >= KEPT_AT_MOST) grounds.clear();
    const path = mixture();
    const made = isPlainSum(path) ? groundOf(path, bookOf(path.edition), given) : undefined;
    grounds.set(key, made);
    return made;
  };

  return {
    weights: pieces.map(weightOf),
    turn: (at) => {
      const piece = pieces[at]!;
      taken[at] = !taken[at];
      if (piece.kind !== 'answer') return;
      const position = decisionPosition(piece.decision);
      given[position] = (taken[at] ? ours : theirs)[position]!;
    },
    typical: () => {
      const ground = groundHere();
      if (ground) return typicalOn(ground, given);
      const path = mixture();
      return typicalOfPath(path, bookOf(path.edition));
    },
    work: () => {
      const ground = groundHere();
      if (ground) return plansIn(waysOn(ground, given));
      const path = mixture();
      return plainWork(path, bookOf(path.edition));
    },
  };
}
