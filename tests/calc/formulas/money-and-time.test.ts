import negativeBinomial from '@stdlib/stats-base-dists-negative-binomial';
import normal from '@stdlib/stats-base-dists-normal';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dollars } from '../../../src/calc/core/money.ts';
import { chargeableWeight, packsToBuy, sparesChance, sparesFor } from '../../../src/calc/formulas/buying.ts';
import { criticalPath } from '../../../src/calc/formulas/critical-path.ts';
import { learningTotal, pathProbability } from '../../../src/calc/formulas/planning.ts';
import { consumerPrices } from '../../../src/calc/formulas/price-index.ts';
import { escalate, priceBeforeTax, roundMoney, salesTax } from '../../../src/calc/formulas/prices.ts';
import {
  breakEvenPieces,
  hoursSavedPerYear,
  internalRate,
  paybackYears,
  presentValue,
} from '../../../src/calc/formulas/worth.ts';

describe('thirty brass pieces a month, worked by hand, no published source', () => {
  const family = { batches: 12, setUpByHand: 0.5, setUpAfter: 0.4, pieces: 360, pieceByHand: 12 / 60 };
  const saved = hoursSavedPerYear.compute({ ...family, pieceAfter: 3.5 / 60 });
  const payback = (money: number, hours: number, anHour: number, yearly = saved) =>
    paybackYears.compute({ cost: money + hours * anHour, yearly: [yearly * anHour] });

  test('hours saved and the first batch', () => {
    expect(saved).toBeCloseTo(52.2, 10);
    const pieces = breakEvenPieces.compute({ once: 2 - 0.5, savedPerPiece: 8.5 / 60 });
    expect(pieces).toBeCloseTo(10.6, 1);
  });

  test('years at 10 and 30 an hour, and with the building as the hobby', () => {
    expect(payback(6500, 300, 10)).toBeCloseTo(18.2, 1);
    expect(payback(6500, 300, 30)).toBeCloseTo(9.9, 1);
    expect(payback(6500, 0, 30)).toBeCloseTo(4.15, 2);
    expect(payback(6500, 300, 0)).toBeNaN();
  });

  test('a tailstock turret instead', () => {
    const turret = hoursSavedPerYear.compute({ ...family, setUpAfter: 0.5, pieceAfter: 5.5 / 60 });
    expect(turret).toBeCloseTo(39, 10);
    expect(payback(700, 25, 30, turret)).toBeCloseTo(1.2, 1);
  });
});

describe('packs and spares, worked by hand, no published source', () => {
  test('three motor runs with a fifth over, in lengths of 5 m at 4.20 a metre', () => {
    const need = 3 * (0.6 + 2) * 1.2;
    expect(need).toBeCloseTo(9.36, 12);
    const metres = packsToBuy.compute({ need, pack: 5 }) * 5;
    expect(metres).toBe(10);
    expect(dollars('4.20').times(metres).toFixed(2)).toBe('42.00');
  });
  test.each([
    [26, 10, 3],
    [1.1, 0.1, 11],
    [0, 5, 0],
  ])('%d from packs of %d', (need, pack, packs) => expect(packsToBuy.compute({ need, pack })).toBe(packs));

  test('drills for 95 % (against @stdlib negative-binomial 0.2.2 too)', () => {
    expect(sparesFor.compute({ holes: 20, breakChance: 0.05, confidence: 0.95 })).toBe(4);
    for (const tools of [1, 2, 3, 4, 9]) {
      const ours = sparesChance.compute({ holes: 20, breakChance: 0.05, tools });
      expect(ours).toBeCloseTo(negativeBinomial.cdf(tools - 1, 20, 0.95), 12);
    }
  });
  test('no holes need no drill; certainty has no number', () => {
    expect(sparesChance.compute({ holes: 3, breakChance: 0.1, tools: 0 })).toBe(0);
    expect(sparesChance.compute({ holes: 0, breakChance: 0.1, tools: 0 })).toBe(1);
    expect(sparesChance.compute({ holes: 1, breakChance: 0.5, tools: 10_000 })).toBeCloseTo(1, 12);
    expect(sparesChance.compute({ holes: 1, breakChance: 0.5, tools: 10_001 })).toBeNaN();
    expect(sparesFor.compute({ holes: 1, breakChance: 0.5, confidence: 0.5 }), 'just enough').toBe(1);
    expect(sparesChance.compute({ holes: 3, breakChance: 0.1, tools: Number.NaN })).toBeNaN();
    expect(sparesFor.compute({ holes: 3, breakChance: 1, confidence: 0.5 })).toBeNaN();
  });
  test('a heavy small box is charged by its real weight', () => {
    const box = { length: 0.2, width: 0.2, height: 0.2, density: 200 };
    expect(chargeableWeight.compute({ ...box, weight: 9 })).toBe(9);
  });
});

describe('money', () => {
  test('100 of 2015 in the money of 2025', () => {
    const { 2015: indexThen, 2025: indexNow } = consumerPrices.byYear as Record<2015 | 2025, number>;
    expect(escalate.compute({ amount: dollars(100), indexThen, indexNow }).toFixed(2)).toBe('135.83');
  });
  test('the index list has every year from 2010 to 2025, rising', () => {
    const years = Object.keys(consumerPrices.byYear).map(Number);
    expect(years).toEqual(Array.from({ length: 16 }, (_, at) => 2010 + at));
    const points = Object.values(consumerPrices.byYear);
    expect(points).toEqual([...points].sort((a, b) => a - b));
  });
  test.each([
    ['2.345', 2, '2.35'],
    ['1.005', 2, '1.01'],
    ['43.962', 2, '43.96'],
    ['149.5', 0, '150'],
  ])('%s to %d places', (amount, places, printed) => {
    expect(roundMoney.compute({ amount: dollars(amount), places }).toFixed(places)).toBe(printed);
  });
  test('tax on and tax off come back to the same cent', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e7 }), fc.constantFrom(0, 0.0825, 0.2), (cents, rate) => {
        const amount = dollars(cents).div(100);
        const total = amount.plus(salesTax.compute({ amount, rate }));
        const back = priceBeforeTax.compute({ total, rate });
        expect(roundMoney.compute({ amount: back, places: 2 }).eq(amount)).toBe(true);
      }),
    );
  });
  test('at its own rate a plan is worth nothing; without a change of sign there is no rate', () => {
    const flows = [-1000, 300, 420, 680];
    expect(presentValue.compute({ flows, rate: internalRate.compute({ flows }) })).toBeCloseTo(0, 8);
    expect(internalRate.compute({ flows: [100, 50] })).toBeNaN();
    expect(internalRate.compute({ flows: [-100, -50] })).toBeNaN();
    expect(internalRate.compute({ flows: [] })).toBeNaN();
    expect(paybackYears.compute({ cost: 100, yearly: [50, 100, 10] })).toBe(1.5);
    expect(paybackYears.compute({ cost: 100, yearly: [50, 25] })).toBe(3);
    expect(paybackYears.compute({ cost: 0, yearly: [] })).toBe(0);
    expect(breakEvenPieces.compute({ once: 10, savedPerPiece: 0 })).toBeNaN();
  });
});

describe('plans', () => {
  test('a ring, a missing activity and an empty plan', () => {
    const ring = [
      { id: 'a', duration: 1, after: ['b'] },
      { id: 'b', duration: 1, after: ['a'] },
    ];
    expect(criticalPath.compute({ activities: ring }).length).toBeNaN();
    expect(criticalPath.compute({ activities: [{ id: 'a', duration: 1, after: ['x'] }] }).length).toBeNaN();
    expect(criticalPath.compute({ activities: [] }).length).toBe(0);
  });
  test('order of the list does not matter', () => {
    const chain = [
      { id: 'c', duration: 3, after: ['a', 'b'] },
      { id: 'b', duration: 2, after: ['a'] },
      { id: 'a', duration: 1, after: [] },
    ];
    const plan = criticalPath.compute({ activities: chain });
    expect(plan.length).toBe(6);
    expect(plan.activities.map(({ id, float }) => [id, float])).toEqual([
      ['c', 0],
      ['b', 0],
      ['a', 0],
    ]);
  });
  test('chance by a deadline (against @stdlib normal 0.3.1)', () => {
    for (let deadline = -90; deadline < 90; deadline += 7) {
      const ours = pathProbability.compute({ means: [0], deviations: [6, 8], deadline });
      expect(ours).toBeCloseTo(normal.cdf(deadline, 0, 10), 12);
    }
    expect(pathProbability.compute({ means: [5], deviations: [0], deadline: 5 })).toBe(1);
    expect(pathProbability.compute({ means: [5], deviations: [0], deadline: 4.9 })).toBe(0);
    expect(pathProbability.compute({ means: [0], deviations: [1], deadline: 50 })).toBe(1);
    expect(pathProbability.compute({ means: [0], deviations: [1], deadline: -50 })).toBe(0);
  });
  test('nobody learns: every piece takes the same', () => {
    expect(learningTotal.compute({ first: 90, rate: 1, n: 7 })).toBe(630);
    expect(learningTotal.compute({ first: 90, rate: 0.8, n: Number.POSITIVE_INFINITY })).toBeNaN();
  });
});
