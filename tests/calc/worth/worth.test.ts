// Whether it is worth it: a case worked by hand by an old hand of the trade (no published source), and laws.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Family } from '../../../src/calc/core/family.ts';
import { emptyPath } from '../../../src/calc/core/path.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { paybackOf } from '../../../src/calc/worth/payback.ts';
import { breakEvenBatch, likelySaved } from '../../../src/calc/worth/saved.ts';
import { worthOf } from '../../../src/calc/worth/worth.ts';
import { alternatives } from '../../../src/content/alternatives.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';
import { sentenceText } from '../../../src/islands/shared/sentence.ts';

/** Twelve batches of thirty, 8.5 minutes saved a piece, set-up half an hour by hand and 0.4 by program. */
const knobs: Family = {
  name: 'Knobs',
  piecesPerBatch: 30,
  batchesPerYear: 12,
  byHand: { setUp: 0.5, piece: 12 / 60 },
  byProgram: { firstSetUp: 2, setUp: 0.4, attended: 3.5 / 60 },
};

describe('thirty brass pieces a month, worked by hand', () => {
  const hours = likelySaved(knobs);
  const case_ = { money: 6500, hours: 300, saved: hours, outside: 0 };

  test('saves 52.2 hours a year, and the first batch pays from 10.6 pieces', () => {
    expect(hours).toBeCloseTo(52.2, 6);
    expect(breakEvenBatch(knobs, true)).toBeCloseTo(10.6, 1);
    expect(breakEvenBatch(knobs, false)).toBe(1);
  });

  test('pays back in 9.9 years at $30 with the building paid, 4.15 with it free', () => {
    expect(paybackOf({ ...case_, perHour: 30, buildingCounts: true })).toBeCloseTo(9.9, 1);
    expect(paybackOf({ ...case_, perHour: 30, buildingCounts: false })).toBeCloseTo(4.15, 2);
  });

  test('takes 18.2 years at $10, and never comes back at nothing an hour', () => {
    expect(paybackOf({ ...case_, perHour: 10, buildingCounts: true })).toBeCloseTo(18.2, 1);
    expect(paybackOf({ ...case_, perHour: 0, buildingCounts: true })).toBeUndefined();
  });

  test('a tailstock turret with three quarters of it pays back in 1.2 years', () => {
    const turret = { money: 700, hours: 25, saved: 0.75 * hours, outside: 0 };
    expect(paybackOf({ ...turret, perHour: 30, buildingCounts: true })).toBeCloseTo(1.2, 1);
  });
});

test('a set-up of 2.0 hours for 0.4, at 14 minutes a piece, pays from about 7 pieces', () => {
  const family = {
    ...knobs,
    byHand: { setUp: 0.4, piece: 20 / 60 },
    byProgram: { ...knobs.byProgram, attended: 6 / 60 },
  };
  expect(Math.round(breakEvenBatch(family, true)!)).toBe(7);
});

describe('over the builds', () => {
  const path = pathOf({ 'which-lathe': 'spare-lathe' });
  const worth = worthOf(path, currentEdition, [knobs], alternatives);

  test('the hours saved lie round the likely figure, and every value of an hour stands twice', () => {
    expect(worth.saved!.p10).toBeLessThan(52.2);
    expect(worth.saved!.p90).toBeGreaterThan(52.2);
    expect(worth.payback.map(({ perHour, buildingCounts }) => [perHour, buildingCounts])).toEqual([
      [0, false],
      [0, true],
      [10, false],
      [10, true],
      [30, false],
      [30, true],
    ]);
    expect(worth.payback[0]!.never).toBe(20);
  });

  test('a dearer hour pays back sooner, and counting the building never does', () => {
    const [, , ten, tenPaid, thirty, thirtyPaid] = worth.payback.map(({ typical }) => typical!);
    expect(thirty!).toBeLessThan(ten!);
    expect(thirtyPaid!).toBeGreaterThan(thirty!);
    expect(tenPaid!).toBeGreaterThan(ten!);
  });

  test('money no longer spent outside shortens it', () => {
    const bought = worthOf(path, currentEdition, [{ ...knobs, outsidePrice: 9 }]);
    expect(bought.outsideAvoided).toBe(3240);
    expect(bought.payback[0]!.typical).toBeLessThan(4);
  });

  test('where the hours are the hobby no pay-back stands, only hours and what each costs', () => {
    const hobby = worthOf(
      pathOf({ purpose: ['learning', 'repeat-batches'] }),
      currentEdition,
      [knobs],
      alternatives,
    );
    expect(hobby.payback).toEqual([]);
    expect(hobby.alternatives.flatMap(({ payback }) => payback)).toEqual([]);
    const { money, hours } = evaluate(pathOf({ purpose: ['learning', 'repeat-batches'] }), currentEdition);
    expect(hobby.hobby!.moneyPerHour * hours.p50).toBeCloseTo(money.p50, 6);
    expect(hobby.verdict.say.map(sentenceText).join(' ')).toContain('an hour');
  });

  test('nothing said and nothing answered is still answered in words', () => {
    const nothing = worthOf(emptyPath(currentEdition.edition), currentEdition);
    expect(nothing.saved).toBeUndefined();
    expect(nothing.verdict.say.length).toBeGreaterThan(0);
  });

  test('families that make no sense are left out', () => {
    const wrong = worthOf(path, currentEdition, [
      { ...knobs, piecesPerBatch: Number.NaN },
      { ...knobs, batchesPerYear: -1 },
    ]);
    expect(wrong.families).toEqual([]);
  });
});

test('a batch at break-even saves exactly its longer set-up', () => {
  const hours = fc.double({ min: 0.01, max: 5, noNaN: true });
  fc.assert(
    fc.property(hours, hours, hours, hours, (setUp, piece, firstSetUp, attended) => {
      const family: Family = {
        ...knobs,
        byHand: { setUp, piece },
        byProgram: { firstSetUp, setUp, attended },
      };
      const pieces = breakEvenBatch(family, true);
      if (pieces === undefined) expect(piece).toBeLessThanOrEqual(attended);
      else if (pieces > 1) expect(pieces * (piece - attended)).toBeCloseTo(firstSetUp - setUp, 6);
    }),
  );
});
