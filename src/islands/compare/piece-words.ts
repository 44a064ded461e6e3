import type { Piece } from '../../calc/comparing.ts';
import type { Answer } from '../../calc/core/path.ts';
import { factById, sizeNames } from '../../calc/facts.ts';
import { decisionById } from '../../calc/guide.ts';
import { saidFigure } from '../lathe/units.ts';
import { sayAnswer } from '../receipts.ts';
import { counted, type Units } from '../shared/format.ts';
import { small } from './names.ts';

/** One thing in which two paths differ: what it is called, and what each says. */
export interface SaidPiece {
  readonly name: string;
  readonly a: string;
  readonly b: string;
  /** In short, where "a, not b" would not say it. */
  readonly short?: string;
}

const answered = (decision: string, answer: Answer): string => {
  const about = decisionById(decision);
  if (answer.length === 0 || !about) return 'left open';
  return sayAnswer(about, answer);
};

const figure = (id: string, value: number | undefined, units: Units): string => {
  const fact = factById(id);
  return value === undefined || !fact ? 'the typical figure' : saidFigure(value, fact.show, units);
};

const inDrawer = (ids: readonly string[]): string =>
  ids.length === 0 ? 'nothing of its own' : `${counted(ids.length, 'part')} of its own`;

/** What has no words of its own on either side. */
const unsaid = (name: string): SaidPiece => ({ name, a: 'its own', b: 'its own', short: name });

/** A piece in words. */
export function sayPiece(piece: Piece, units: Units): SaidPiece {
  switch (piece.kind) {
    case 'answer': {
      const { decision, a, b } = piece;
      const name = decisionById(decision)?.name ?? decision;
      return { name, a: answered(decision, a), b: answered(decision, b) };
    }
    case 'fact': {
      const name = factById(piece.fact)?.name ?? piece.fact;
      return { name, a: figure(piece.fact, piece.a, units), b: figure(piece.fact, piece.b, units) };
    }
    case 'size':
      return { name: 'Size of lathe', a: sizeNames[piece.a], b: sizeNames[piece.b] };
    case 'edition':
      return { name: 'Prices', a: `edition ${piece.a}`, b: `edition ${piece.b}` };
    case 'drawer':
      return {
        name: 'In the drawer',
        a: inDrawer(piece.onlyA),
        b: inDrawer(piece.onlyB),
        short: `In the drawer already: ${counted(piece.onlyA.length, 'part')} in one only, ${piece.onlyB.length} in the other only`,
      };
    case 'own-prices':
      return unsaid('Own quotes, orders and shops');
    case 'chances':
      return unsaid('Own chances of trouble');
  }
}

/** "Control: motion card in a computer, not ready-made control" */
export const sayShort = ({ name, a, b, short }: SaidPiece): string =>
  short ?? `${name}: ${small(a)}, not ${small(b)}`;

/** What tells one piece from the next. */
export function keyOfPiece(piece: Piece): string {
  if (piece.kind === 'answer') return piece.decision;
  return piece.kind === 'fact' ? piece.fact : piece.kind;
}
