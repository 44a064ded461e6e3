// Alternatives in the same rows and the same builds as conversions.
import { describe, expect, test } from 'vitest';
import { compile } from '../../../src/calc/choices/state.ts';
import { abilityRows } from '../../../src/calc/core/alternative.ts';
import { isBand, pertMean } from '../../../src/calc/core/band.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { alternativesOf } from '../../../src/calc/worth/alternatives.ts';
import { alternatives } from '../../../src/content/alternatives.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';
import { usuallyOwned } from '../../../src/content/usually-owned.ts';

const path = pathOf({});
const figures = alternativesOf(path, currentEdition, alternatives);
const of = (id: string) => figures.find((each) => each.id === id)!;

test('eighteen of them, each once, every row filled, every band in order', () => {
  expect(new Set(alternatives.map(({ id }) => id)).size).toBe(18);
  for (const { id, abilities, costs, saves, risks } of alternatives) {
    expect(
      abilityRows.every((row) => abilities[row].say.length > 0),
      id,
    ).toBe(true);
    const once = 'path' in costs ? [] : [costs.once.money, costs.once.hours, costs.once.weeksOut];
    const bands = [
      ...once,
      ...(saves ? [saves] : []),
      ...risks.flatMap((risk) => [risk.chance, risk.money, risk.hours]),
    ];
    expect(bands.every(isBand), id).toBe(true);
    if (!('path' in costs)) expect(risks.length, id).toBeGreaterThan(0);
  }
});

test('what makes one come first asks for questions and options that exist', () => {
  for (const { firstWhen = [] } of alternatives)
    for (const { when } of firstWhen) expect(() => compile(when)).not.toThrow();
});

describe('in the same builds', () => {
  test('a used machine costs about its band with its troubles, and no freight', () => {
    const { costs, risks } = alternatives.find(({ id }) => id === 'second-lathe')!;
    const once = 'path' in costs ? undefined : costs.once;
    const trouble = risks.reduce((sum, risk) => sum + pertMean(risk.chance) * pertMean(risk.money), 0);
    const mean = pertMean(once!.money) + trouble;
    expect(Math.abs(of('second-lathe').money.mean - mean)).toBeLessThan(0.01 * mean);
  });

  test('goods carry the freight, tax and duty of the country', () => {
    const dear = alternativesOf(
      pathOf({}, 'medium', { facts: { 'landed-rate': 1 } }),
      currentEdition,
      alternatives,
    );
    const free = alternativesOf(
      pathOf({}, 'medium', { facts: { 'landed-rate': 0 } }),
      currentEdition,
      alternatives,
    );
    const at = (list: typeof dear, id: string) => list.find((each) => each.id === id)!.money.p10;
    expect(at(dear, 'readout')).toBeCloseTo(2 * at(free, 'readout'), -1);
    expect(at(dear, 'second-lathe')).toBe(at(free, 'second-lathe'));
  });

  test('a path among them is the report of that path on the owner’s lathe and drawer', () => {
    const own = pathOf({ country: 'vat-country' }, 'small', { owned: usuallyOwned });
    const synchroniser = alternativesOf(own, currentEdition, alternatives).find(
      ({ id }) => id === 'thread-synchroniser',
    )!;
    const report = evaluate(synchroniser.asPath!, currentEdition);
    expect(report.path.size).toBe('small');
    expect(report.path.answers.country).toEqual(['vat-country']);
    expect(synchroniser.money).toMatchObject({ p50: report.money.p50, p90: report.money.p90 });
    expect(synchroniser.weeksOut.p50).toBe(report.weeksOut.p50);
  });

  test('what is paid by the piece stands by the year, once it is known what is made', () => {
    expect(of('send-out').perYear).toBeUndefined();
    expect(of('shared-workshop').perYear!.money.p50).toBeGreaterThan(360);
    const family = {
      name: 'Knobs',
      piecesPerBatch: 30,
      batchesPerYear: 12,
      byHand: { setUp: 0.5, piece: 0.2 },
      byProgram: { firstSetUp: 2, setUp: 0.4, attended: 0.06 },
    };
    const asked = alternativesOf(path, currentEdition, alternatives, [{ ...family, outsidePrice: 9 }]);
    expect(asked.find(({ id }) => id === 'send-out')!.perYear!.money.p50).toBe(360 * 9);
    const guessed = alternativesOf(path, currentEdition, alternatives, [family]).find(
      ({ id }) => id === 'send-out',
    )!;
    expect(guessed.perYear!.money.p50).toBeGreaterThan(360 * 9);
  });
});
