import { answerMasks } from '../../choices/choose.ts';
import { decisionPosition } from '../../choices/state.ts';
import type { Path } from '../../core/path.ts';
import type { PriceBook } from '../../core/price-book.ts';
import { allowanceOf } from '../../cost/builds.ts';
import { partsLookingAt, risksLookingAt, tasksLookingAt } from '../looks-at.ts';
import { type Ground, groundOf, typicalOn, waysOn } from './ground.ts';
import { type Piece, taking } from './pieces.ts';
import { plainWork, plansIn, typicalOfPath, type Walk } from './walk.ts';

/** Grounds that are kept; one takes about as long to make as a path to work out. */
const KEPT_AT_MOST = 32;

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
