// Shares that no order decides: laws of the shares themselves, whatever is shared.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gainsOverOrders, orderFreeShares } from '../../../../src/calc/formulas/sharing.ts';
import { everyMixture, exactly, sampled, wholeShares } from '../../../../src/calc/paths/compare/shares.ts';
import type { Walk } from '../../../../src/calc/paths/compare/walk.ts';

const sum = (list: readonly number[]): number => list.reduce((total, each) => total + each, 0);
const ones = (bits: number): number => [...bits.toString(2)].filter((digit) => digit === '1').length;

const anyGame = (players: number) =>
  fc.array(fc.integer({ min: -1e6, max: 1e6 }), { minLength: 1 << players, maxLength: 1 << players });

/** A walk over a game that is given value by value. */
function walkOver(values: readonly number[], weights: readonly number[]): Walk {
  let group = 0;
  return {
    weights,
    turn: (piece) => {
      group ^= 1 << piece;
    },
    typical: () => ({ money: values[group]!, hours: -2 * values[group]! }),
    work: () => 1,
  };
}

describe('the shares', () => {
  test('add up to the worth of all less that of none', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 6 }).chain(anyGame), (values) => {
        expect(sum(orderFreeShares.compute({ values }))).toBeCloseTo(values.at(-1)! - values[0]!, 4);
      }),
    );
  });

  test('are equal where only the number of players counts', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1e6, max: 1e6 }), { minLength: 6, maxLength: 6 }), (bySize) => {
        const values = Array.from({ length: 32 }, (_, group) => bySize[ones(group)]!);
        expect(new Set(gainsOverOrders(values)).size).toBe(1);
      }),
    );
  });

  test('are nothing for a player that adds nothing, and the same for the others without it', () => {
    fc.assert(
      fc.property(anyGame(4), (four) => {
        const five = [...four, ...four];
        const shares = orderFreeShares.compute({ values: five });
        expect(shares[4]).toBe(0);
        orderFreeShares.compute({ values: four }).forEach((share, at) => {
          expect(shares[at]).toBeCloseTo(share, 6);
        });
      }),
    );
  });

  test('of two games added are the shares of both added', () => {
    fc.assert(
      fc.property(anyGame(4), anyGame(4), (one, other) => {
        const both = gainsOverOrders(one.map((value, at) => value + other[at]!));
        const [p, q] = [gainsOverOrders(one), gainsOverOrders(other)];
        expect(both).toEqual(p.map((gain, at) => gain + q[at]!));
      }),
    );
  });
});

describe('whole shares', () => {
  const anyGains = fc
    .tuple(
      fc.array(fc.integer({ min: -1e9, max: 1e9 }), { minLength: 1, maxLength: 9 }),
      fc.integer({ min: 1, max: 720 }),
    )
    .map(([gains, orders]) => {
      const rest = ((sum(gains) % orders) + orders) % orders;
      return [[...gains.slice(1), gains[0]! - rest], orders] as const;
    });

  test('add up exactly, each within one of its own', () => {
    fc.assert(
      fc.property(anyGains, ([gains, orders]) => {
        const shares = wholeShares(gains, orders);
        expect(sum(shares) * orders).toBe(sum(gains));
        shares.forEach((share, at) => {
          expect(Number.isInteger(share)).toBe(true);
          expect(Math.abs(share - gains[at]! / orders)).toBeLessThan(1);
        });
      }),
    );
  });

  test('turn their signs with the gains', () => {
    fc.assert(
      fc.property(anyGains, ([gains, orders]) => {
        const turned = wholeShares(
          gains.map((gain) => 0 - gain),
          orders,
        );
        expect(turned).toEqual(wholeShares(gains, orders).map((share) => 0 - share));
      }),
    );
  });
});

describe('a walk', () => {
  test('comes to every mixture once, whatever is turned first', () => {
    fc.assert(
      fc.property(anyGame(5), fc.array(fc.nat(9), { minLength: 5, maxLength: 5 }), (values, weights) => {
        expect(everyMixture(walkOver(values, weights), 5).map(({ money }) => money)).toEqual(values);
      }),
    );
  });

  test('a sample adds up to the whole difference, and turns its signs when the paths are exchanged', () => {
    fc.assert(
      fc.property(anyGame(6), (values) => {
        const shared = sampled(walkOver(values, []), 6);
        expect(sum(shared.gains.money)).toBe(shared.orders * (values.at(-1)! - values[0]!));
        const other = sampled(walkOver(values.toReversed(), []), 6);
        expect(other.gains.money).toEqual(shared.gains.money.map((gain) => 0 - gain));
        expect(other.errors!.money).toEqual(shared.errors!.money);
      }),
    );
  });

  test('a sample lies about the exact shares as far as its error says', () => {
    const values = Array.from({ length: 256 }, (_, group) => ((group * 7919) % 1009) + 40 * ones(group) ** 2);
    const [near, exact] = [sampled(walkOver(values, []), 8), exactly(walkOver(values, Array(8).fill(1)), 8)];
    near.gains.money.forEach((gain, at) => {
      const off = Math.abs(gain / near.orders - exact.gains.money[at]! / exact.orders);
      expect(off).toBeLessThan(4 * near.errors!.money[at]! + 1);
    });
  });
});
