import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Piece, piecesOf, type Share } from '../../../src/calc/comparing.ts';
import { decisions } from '../../../src/calc/guide.ts';
import { exactly } from '../../../src/islands/compare/exactly.ts';
import { keyOfPiece, sayPiece, sayShort } from '../../../src/islands/compare/piece-words.ts';
import { DRAWN, sharesIn, stepsOf } from '../../../src/islands/compare/waterfall.ts';
import { anyPath } from '../../arbitrary.ts';

const cents = fc.integer({ min: -300_000, max: 300_000 });

function sharesFrom(amounts: readonly number[]): Share[] {
  return amounts.map((amount, at) => {
    const { id } = decisions[at]!;
    const piece: Piece = { kind: 'answer', decision: id, a: [], b: [] };
    return { piece, money: amount / 100, hours: 0, moves: amount !== 0, error: undefined };
  });
}

const hundredths = (n: number): number => Math.round(n * 100);

describe('from one typical figure to the other', () => {
  test('steps follow each other without a gap and end on the other figure to the cent, folded or not', () => {
    fc.assert(
      fc.property(
        fc.array(cents, { minLength: 1, maxLength: 20 }),
        cents,
        fc.boolean(),
        (amounts, b, all) => {
          const a = b + amounts.reduce((sum, each) => sum + each, 0);
          const total = { a: a / 100, b: b / 100, difference: (a - b) / 100 };
          const steps = stepsOf('money', sharesFrom(amounts), total, all);
          let at = b;
          for (const step of steps) {
            expect(hundredths(step.from)).toBe(at);
            at += hundredths(step.by);
            expect(hundredths(step.to)).toBe(at);
          }
          expect(at).toBe(a);
          expect(steps.length).toBeLessThanOrEqual(all ? amounts.length : DRAWN + 1);
          const single = steps.filter(({ share }) => share).map(({ by }) => Math.abs(by));
          expect(single).toEqual(single.toSorted((p, q) => q - p));
        },
      ),
    );
  });

  test('what is printed adds up', () => {
    const shares = sharesFrom([12_350, -4_005, 1]);
    const printed = sharesIn('money', shares).map(({ money }) => exactly('money', money, true));
    expect(printed).toEqual(['+$123.50', '−$40.05', '+$0.01']);
    expect(exactly('money', 83.46, true)).toBe('+$83.46');
    expect(exactly('hours', -3.2)).toBe('−3.20 h');
    expect(exactly('money', -0.001, true)).toBe('$0.00');
  });
});

describe('pieces in words', () => {
  test('everything in which two paths can differ has a name and says two different things', () => {
    fc.assert(
      fc.property(anyPath, anyPath, (a, b) => {
        const pieces = piecesOf(a, b);
        expect(new Set(pieces.map(keyOfPiece)).size).toBe(pieces.length);
        for (const piece of pieces) {
          const said = sayPiece(piece, 'metric');
          expect(said.name).not.toMatch(/^[a-z0-9]+(-[a-z0-9]+)+$/);
          expect(`${said.a} ${said.b}`).not.toMatch(/undefined|NaN|^ | $/);
          if (piece.kind === 'answer' || piece.kind === 'size') expect(said.a).not.toBe(said.b);
        }
      }),
      { numRuns: 30 },
    );
  });

  test('an answer reads as a sentence', () => {
    const piece: Piece = {
      kind: 'answer',
      decision: 'control',
      a: ['motion-card-pc'],
      b: ['standalone-control'],
    };
    expect(sayShort(sayPiece(piece, 'metric'))).toBe(
      'Control: PC with a card that does the timing, not ready-made lathe control with its own panel',
    );
    expect(sayPiece({ ...piece, b: [] }, 'metric').b).toBe('left open');
  });
});
