import type { Path } from '../core/path.ts';
import { breakEvenPieces } from '../formulas/worth.ts';
import { curveOf, type Values, type WorkingFigure } from './figure.ts';

const minutes = { unit: 'min', per: 1 / 60 } as const;
const hours = { unit: 'h', per: 1 / 3600 } as const;
const counted = { unit: 'pieces', one: 'piece', per: 1 } as const;
const MOST = 200;

function answer({ program = 0, byHand = 0, attended = 0, pieces = 1 }: Values) {
  const saved = byHand - attended;
  const from = breakEvenPieces.compute({ once: program, savedPerPiece: saved });
  const first = Math.max(1, Math.ceil(from - 1e-9));
  const pays = Number.isFinite(from);
  return {
    say: !pays
      ? 'It never pays in hours: a piece takes no less of your time by program than by hand.'
      : pieces >= from
        ? 'Pays in hours from piece {first}. A batch of {pieces} is large enough.'
        : 'Pays in hours from piece {first}. A batch of {pieces} is too small.',
    rows: [
      ...(pays
        ? [{ id: 'first', label: 'It pays from piece', value: first, written: { unit: '', per: 1 } } as const]
        : []),
      { id: 'saved', label: 'Saved on a piece', value: saved, written: minutes },
      { id: 'hand', label: 'Turning them by hand', value: pieces * byHand, written: hours },
      { id: 'run', label: 'By program, with its set-up', value: program + pieces * attended, written: hours },
    ],
    curves: [
      { name: 'by program', points: curveOf(0, MOST, (each) => program + each * attended, 1) },
      { name: 'by hand', points: curveOf(0, MOST, (each) => each * byHand, 1), broken: true },
    ],
    mark: [pieces, program + pieces * attended],
  } as const;
}

/** The first kind of part on the path; its times are kept in hours. */
function ownOf({ families = [] }: Path): Values {
  const [family] = families;
  if (!family) return {};
  const { piecesPerBatch, byHand, byProgram } = family;
  return {
    pieces: piecesPerBatch,
    program: 3600 * (byProgram.firstSetUp - byHand.setUp),
    byHand: 3600 * byHand.piece,
    attended: 3600 * byProgram.attended,
  };
}

/** From how many pieces a longer set-up pays in hours. */
export const batch: WorkingFigure = {
  id: 'batch',
  topic: 'who-should-not-convert',
  question: 'From how many pieces does a program pay?',
  begin: 'Put in a part you make often, with the times that you would take.',
  inputs: [
    {
      id: 'pieces',
      label: 'Pieces in the batch',
      unit: '1',
      written: counted,
      low: 1,
      high: MOST,
      step: 1,
      example: 20,
    },
    {
      id: 'program',
      label: 'Set-up and program, more than by hand',
      unit: 's',
      written: minutes,
      low: 0,
      high: 600,
      step: 1,
      example: 96,
    },
    {
      id: 'byHand',
      label: 'A piece by hand',
      unit: 's',
      written: minutes,
      low: 1,
      high: 120,
      step: 1,
      example: 20,
    },
    {
      id: 'attended',
      label: 'Your time at a piece by program',
      unit: 's',
      written: minutes,
      low: 0,
      high: 120,
      step: 1,
      example: 6,
    },
  ],
  across: { label: 'pieces in the batch', written: counted },
  up: { label: 'your hours', written: hours },
  ownOf,
  formulas: [breakEvenPieces.id],
  answer,
};
