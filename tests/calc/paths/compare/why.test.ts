// Why two ways differ: shares of the answers, held against plain evaluation.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { piecesOf, taking, type WhyDiffer, whyDiffer } from '../../../../src/calc/comparing.ts';
import { quickWalk } from '../../../../src/calc/paths/compare/quick-walk.ts';
import { everyMixture } from '../../../../src/calc/paths/compare/shares.ts';
import { plainWalk } from '../../../../src/calc/paths/compare/walk.ts';
import { pathOf, referencePaths } from '../../../../src/content/reference-paths.ts';
import { bookOf, byAnswers, mixture, type Pair, partingIn, typicalFigures } from './pairs-of-paths.ts';

const cents = (dollars: number): number => Math.round(100 * dollars);

function addsUp({ money, hours, shares }: WhyDiffer): void {
  for (const [kind, { a, b, difference }] of [['money', money] as const, ['hours', hours] as const]) {
    const all = shares.map((share) => cents(share[kind]));
    shares.forEach((share, at) => {
      expect(all[at]! / 100).toBe(share[kind]);
    });
    expect(all.reduce((sum, each) => sum + each, 0)).toBe(cents(difference));
    expect(cents(a) - cents(b)).toBe(cents(difference));
  }
}

const why = ([a, b]: Pair): WhyDiffer => whyDiffer(a, b, bookOf);

describe('the shares add up to the difference to the cent', () => {
  test.each([
    ['few', 1850, partingIn(1, 3)],
    ['some', 140, partingIn(4, 6, byAnswers)],
    ['many', 10, partingIn(10, 12, byAnswers)],
  ] as const)('in pairs that differ in %s things: %d of them', (_, numRuns, pairs) => {
    fc.assert(
      fc.property(pairs, (pair) => addsUp(why(pair))),
      { numRuns },
    );
  });

  test('where nearly every answer differs, and the report says that it is an approximation', () => {
    const told = why([referencePaths[0]!.path, referencePaths[1]!.path]);
    addsUp(told);
    expect(told.exact).toBe(false);
    expect(told.orders).toBeGreaterThan(1);
    expect(told.shares.every(({ error }) => error !== undefined && error.money >= 0)).toBe(true);
  });
});

/** Every order of some things. */
const ordersOf = (list: readonly number[]): number[][] =>
  list.length === 0
    ? [[]]
    : list.flatMap((each) => ordersOf(list.filter((other) => other !== each)).map((rest) => [each, ...rest]));

test('the shares are the mean over every order, each mixture evaluated whole', () => {
  fc.assert(
    fc.property(partingIn(1, 5), (pair) => {
      const pieces = piecesOf(...pair);
      const figures = Array.from({ length: 1 << pieces.length }, (_, bits) =>
        typicalFigures(mixture(pair, pieces, bits)),
      );
      const orders = ordersOf(pieces.map((_, at) => at));
      const gained = { money: pieces.map(() => 0), hours: pieces.map(() => 0) };
      for (const order of orders) {
        let bits = 0;
        for (const at of order) {
          const before = figures[bits]!;
          bits |= 1 << at;
          gained.money[at]! += figures[bits]!.money - before.money;
          gained.hours[at]! += figures[bits]!.hours - before.hours;
        }
      }
      const told = why(pair);
      expect(told.shares.length).toBe(pieces.length);
      told.shares.forEach(({ money, hours, moves }, at) => {
        expect(Math.abs(100 * money - gained.money[at]! / orders.length)).toBeLessThan(1);
        expect(Math.abs(100 * hours - gained.hours[at]! / orders.length)).toBeLessThan(1);
        if (!moves) expect([money, hours]).toEqual([0, 0]);
      });
    }),
    { numRuns: 15 },
  );
});

test('exchanging the paths turns every sign, exact or sampled', () => {
  const turned = (value: number): number => 0 - value;
  for (const [pairs, numRuns] of [
    [partingIn(1, 4), 20],
    [partingIn(9, 12, byAnswers), 4],
  ] as const) {
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        const [here, there] = [why([a, b]), why([b, a])];
        expect(there.shares.map(({ money }) => money)).toEqual(here.shares.map(({ money }) => turned(money)));
        expect(there.shares.map(({ hours }) => hours)).toEqual(here.shares.map(({ hours }) => turned(hours)));
        expect(there.money.difference).toBe(turned(here.money.difference));
      }),
      { numRuns },
    );
  }
});

describe('every mixture is worked out as evaluating it whole would', () => {
  const [reference, , frugal, , stiff] = referencePaths.map(({ path }) => path);
  const open = pathOf({ housing: null, 'axis-motor': null, holes: null });
  const few = {
    control: ['motion-card-pc'],
    housing: ['plastic-box'],
    'axis-motor': ['open-loop-stepper'],
    country: ['vat-country'],
  };
  const cases: readonly (readonly [string, Pair])[] = [
    ['eight answers, some of them a clash', [reference!, frugal!]],
    ['eight of many answers', [stiff!, reference!]],
    [
      'open questions',
      [open, pathOf({ housing: 'plastic-box', cable: 'moulded-leads', control: 'parallel-port-pc' })],
    ],
    [
      'hardly anything answered: each of the 40 ways is another plan',
      [pathOf({}, 'medium', { answers: {} }), pathOf({}, 'medium', { answers: few })],
    ],
    [
      'the drawer, a figure, the edition and the country beside answers',
      [
        { ...reference!, owned: ['cable', 'drills-to-have'], facts: { 'hours-per-week': 12 } },
        { ...pathOf({ country: 'vat-country', holes: 'drill-in-tool-post' }), edition: '2026-11' },
      ],
    ],
    [
      'own chances, and an allowance in the place of the risks',
      [
        { ...reference!, chances: { 'electrical-noise': 1 } },
        { ...pathOf({ cable: 'moulded-leads' }), allowance: 0.1 },
      ],
    ],
  ];
  test.each(cases)('%s', (_, [a, b]) => {
    const pieces = piecesOf(a, b).slice(0, 8);
    const quick = everyMixture(quickWalk(a, b, pieces, bookOf), pieces.length);
    expect(quick.length).toBe(1 << pieces.length);
    expect(quick).toEqual(everyMixture(plainWalk(a, b, pieces, bookOf), pieces.length));
  });

  test('on any pair', () => {
    fc.assert(
      fc.property(partingIn(1, 5), ([a, b]) => {
        const pieces = piecesOf(a, b);
        expect(everyMixture(quickWalk(a, b, pieces, bookOf), pieces.length)).toEqual(
          everyMixture(plainWalk(a, b, pieces, bookOf), pieces.length),
        );
      }),
      { numRuns: 40 },
    );
  });
});

describe('the pieces', () => {
  test('what changes nothing gets nothing, and is told apart', () => {
    const a = {
      ...pathOf({ 'thread-kinds': 'inch-threads', cable: 'moulded-leads' }),
      facts: { 'hours-per-week': 3 },
    };
    const told = why([a, pathOf({})]);
    const still = told.shares.filter(({ moves }) => !moves);
    expect(still.map(({ piece }) => piece)).toEqual([
      { kind: 'answer', decision: 'thread-kinds', a: ['inch-threads'], b: ['metric-threads'] },
      { kind: 'fact', fact: 'hours-per-week', a: 3, b: undefined },
    ]);
    expect(still.every(({ money, hours }) => money === 0 && hours === 0)).toBe(true);
    expect(cents(told.shares[1]!.money)).toBe(cents(told.money.difference));
  });

  test('taking one leaves the others; taking all leaves no difference', () => {
    fc.assert(
      fc.property(partingIn(1, 8), ([a, b]) => {
        const pieces = piecesOf(a, b);
        for (const piece of pieces) {
          expect(piecesOf(taking(a, b, piece), b)).toEqual(pieces.filter((each) => each !== piece));
        }
        const all = pieces.reduce((path, piece) => taking(path, b, piece), a);
        expect(piecesOf(all, b)).toEqual([]);
        expect(why([all, b]).money.difference).toBe(0);
      }),
      { numRuns: 100 },
    );
  });

  test('not sure yet and not said are one answer; the order of what was typed is no difference', () => {
    const a = { ...pathOf({ cable: null }), owned: ['x', 'y'], chances: { p: 0.1, q: 0.2 } };
    const b = { ...pathOf({ cable: [] }), owned: ['y', 'x'], chances: { q: 0.2, p: 0.1 } };
    expect(piecesOf(a, b)).toEqual([]);
  });

  test('are plain data', () => {
    const told = why([referencePaths[0]!.path, referencePaths[3]!.path]);
    expect(structuredClone(told)).toEqual(told);
  });
});
