// The risks of a path as they are listed: what they cost on average, and in which order.
import { describe, expect, it } from 'vitest';
import { BUILDS } from '../../../src/calc/cost/strata.ts';
import { evaluate, type RiskRow } from '../../../src/calc/evaluate.ts';
import { risks } from '../../../src/calc/trade.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';

const rowsWith = (chances: Readonly<Record<string, number>>): readonly RiskRow[] =>
  evaluate(pathOf({}, 'medium', { chances }), currentEdition).risks;
const soundOf = (rows: readonly RiskRow[]) => rows.filter(({ counted, spares }) => counted && !spares);
const rowOf = (rows: readonly RiskRow[], id: string): RiskRow => rows.find((row) => row.id === id)!;

describe('the risks of a path', () => {
  it('stand dearest first, an hour weighed as ten dollars', () => {
    const plain = rowsWith({});
    const weights = plain.map(({ expectedMoney, expectedHours }) => expectedMoney + 10 * expectedHours);
    expect(weights).toEqual(weights.toSorted((a, b) => b - a));
    expect(weights[0]).toBeGreaterThan(weights.at(-1)!);
  });

  it('can hurt where the trade says so', () => {
    const plain = rowsWith({});
    const hurting = new Set(risks.filter(({ injury }) => injury).map(({ id }) => id));
    expect(plain.filter(({ injury }) => injury).length).toBeGreaterThan(0);
    for (const { id, injury } of plain) expect(injury, id).toBe(hurting.has(id));
  });

  it('cost on average their chance of what they cost, within their bands', () => {
    const sound = soundOf(rowsWith({}));
    expect(sound.length).toBeGreaterThan(10);
    const share = 1 / BUILDS;
    for (const { id, chance, money, hours, expectedMoney, expectedHours } of sound) {
      expect(expectedMoney, id).toBeGreaterThanOrEqual((chance - share) * money[0]);
      expect(expectedMoney, id).toBeLessThanOrEqual((chance + share) * money[2]);
      expect(expectedHours, id).toBeGreaterThanOrEqual((chance - share) * hours[0]);
      expect(expectedHours, id).toBeLessThanOrEqual((chance + share) * hours[2]);
    }
  });

  it('have the chance that an owner gives them, ours beside it', () => {
    const plain = rowsWith({});
    const { id, chance } = soundOf(plain).find((risk) => risk.chance < 0.5 && risk.expectedMoney > 0)!;
    expect(rowOf(plain, id)).not.toHaveProperty('theirs');
    const sure = rowOf(rowsWith({ [id]: 1 }), id);
    expect([sure.chance, sure.theirs, sure.ours, sure.ofTwenty]).toEqual([1, 1, chance, 20]);
    expect(sure.expectedMoney).toBeGreaterThanOrEqual(sure.money[0]);
    expect(sure.expectedMoney).toBeLessThanOrEqual(sure.money[2]);
    const quarter = rowOf(rowsWith({ [id]: 0.25 }), id);
    expect(quarter.ofTwenty).toBe(5);
    expect(quarter.expectedMoney).toBeLessThan(sure.expectedMoney);
    expect(rowOf(rowsWith({ [id]: 0 }), id).expectedMoney).toBe(0);
  });
});
