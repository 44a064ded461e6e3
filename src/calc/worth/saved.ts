import type { Band } from '../core/band.ts';
import type { Family } from '../core/family.ts';
import type { Column, Edition } from '../cost/edition.ts';
import { BUILDS } from '../cost/strata.ts';
import { breakEvenPieces, hoursSavedPerYear } from '../formulas/worth.ts';
import { columnOf } from './alternative-builds.ts';

/** How far the owner's own times may be off, as factors: by hand, and by program. Judgement, no source. */
const BY_HAND: Band = [0.85, 1, 1.2];
const BY_PROGRAM: Band = [0.8, 1, 1.5];

export const piecesOf = ({ piecesPerBatch, batchesPerYear }: Family): number =>
  piecesPerBatch * batchesPerYear;

/** Hours a year that one family gives back, taken at its word. Below zero where programs cost more than they save. */
export const likelySaved = (family: Family): number =>
  hoursSavedPerYear.compute({
    batches: family.batchesPerYear,
    setUpByHand: family.byHand.setUp,
    setUpAfter: family.byProgram.setUp,
    pieces: piecesOf(family),
    pieceByHand: family.byHand.piece,
    pieceAfter: family.byProgram.attended,
  });

/** From how many pieces a batch pays for its longer set-up; one where the set-up is no longer; undefined where it never does. */
export function breakEvenBatch({ byHand, byProgram }: Family, first: boolean): number | undefined {
  const longer = (first ? byProgram.firstSetUp : byProgram.setUp) - byHand.setUp;
  const savedPerPiece = byHand.piece - byProgram.attended;
  if (longer <= 0) return savedPerPiece >= 0 ? 1 : undefined;
  const pieces = breakEvenPieces.compute({ once: longer, savedPerPiece });
  return Number.isFinite(pieces) ? Math.max(1, pieces) : undefined;
}

/**
 * Hours saved a year in each of the 2,000 builds, hundredths: each family's times are off by a factor of its own, which
 * stands in hundredths itself.
 */
export function savedBuilds(edition: Edition, families: readonly Family[]): Column {
  const saved = new Float64Array(BUILDS);
  for (const [at, family] of families.entries()) {
    const hand = columnOf(edition, `family ${at} by hand`, BY_HAND, 'pace');
    const program = columnOf(edition, `family ${at} by program`, BY_PROGRAM, 'pace');
    const handHours = family.batchesPerYear * family.byHand.setUp + piecesOf(family) * family.byHand.piece;
    const programHours =
      family.batchesPerYear * family.byProgram.setUp + piecesOf(family) * family.byProgram.attended;
    for (let build = 0; build < BUILDS; build += 1) {
      saved[build]! += handHours * hand[build]! - programHours * program[build]!;
    }
  }
  return saved.map((each) => Math.round(each));
}

/** Dollars a year that no longer go to somebody outside. */
export const outsideAvoided = (families: readonly Family[]): number =>
  families.reduce((sum, family) => sum + piecesOf(family) * (family.outsidePrice ?? 0), 0);
