import type { Piece } from '../../calc/comparing.ts';
import type { Path } from '../../calc/core/path.ts';
import { change } from '../stores.ts';
import type { SaidPiece } from './piece-words.ts';

/** Takes one piece of another path into the open one: a change like any other, with its receipt and Undo. */
export async function tryAnswer(a: Path, b: Path, piece: Piece, said: SaidPiece): Promise<void> {
  const { taking } = await import('../../calc/comparing.ts');
  change(taking(a, b, piece), {
    ...(piece.kind === 'answer' ? { decision: piece.decision } : {}),
    name: said.name,
    saidBefore: said.a,
    saidNow: said.b,
  });
}
