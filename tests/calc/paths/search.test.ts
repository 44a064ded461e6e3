// The search against going through every path, and what it promises.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyPath, type Path } from '../../../src/calc/core/path.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { decisions } from '../../../src/calc/guide.ts';
import { countLegal } from '../../../src/calc/paths/search/count.ts';
import { taskOf } from '../../../src/calc/paths/search/task.ts';
import { cheapestWay, type Limit, searchNow, searchWays } from '../../../src/calc/paths/search.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';
import { everyWay, unbeaten } from './every-way.ts';

/** Brute force takes about a millisecond a path: larger spaces are left to `npm run bench`. */
const SMALL = Number(process.env.SEARCH_SPACE ?? 60);
const RUNS = Number(process.env.SEARCH_RUNS ?? 60);

const single = decisions.filter(({ place, many }) => place === 'guide' && !many).map(({ id }) => id);

const limits: fc.Arbitrary<Limit[]> = fc
  .tuple(
    fc.option(fc.integer({ min: 900, max: 9000 }).map((most): Limit => ({ kind: 'money', most }))),
    fc.option(
      fc.integer({ min: 60, max: 500 }).map((most): Limit => ({ kind: 'hours', most })),
      { freq: 3 },
    ),
    fc.option(
      fc.integer({ min: 2, max: 25 }).map((most): Limit => ({ kind: 'weeks', most })),
      { freq: 3 },
    ),
    fc.option(
      fc.constantFrom(3, 4).map((most): Limit => ({ kind: 'skill', most })),
      { freq: 1 },
    ),
    fc.subarray<Limit['kind']>(['reversible', 'whole-castings', 'hand-use', 'threads', 'checks'], {
      maxLength: 2,
    }),
    fc.option(fc.constant<Limit>({ kind: 'drill', diameter: 0.008, material: 'brass' }), { freq: 1 }),
    fc.option(
      fc.constantFrom(3e-5, 9e-5).map((most): Limit => ({ kind: 'play', most })),
      { freq: 1 },
    ),
  )
  .map(([money, hours, weeks, skill, plain, drill, play]) => [
    ...[money, hours, weeks, skill, drill, play].filter((limit) => limit !== null),
    ...plain.map((kind) => ({ kind }) as Limit),
  ]);

const paths: fc.Arbitrary<Path> = fc.constantFrom(
  pathOf({}),
  pathOf({ 'driven-axes': 'carriage-only', compound: 'keep-compound' }),
  pathOf({ control: 'standalone-control', 'spindle-motor': 'brushless-kit' }, 'small'),
  emptyPath(currentEdition.edition),
  { ...pathOf({}), allowance: 0.1 },
  {
    ...pathOf({ 'old-parts': 'sell-old-parts' }),
    purchases: {
      'motion-card': { state: 'ordered', price: '120', seller: 'A shop' },
      'steel-cabinet-part': { state: 'quoted', price: '300' },
    },
    sellers: { 'A shop': { freight: '15', abroad: true } },
    chances: { 'machine-too-flexible': 0.5 },
  },
);

const spaces = fc.tuple(paths, fc.subarray(single, { minLength: 1, maxLength: 7 }), limits);

function legalOf(path: Path, free: readonly string[]): number {
  const { space, state } = taskOf(path, currentEdition, free, []);
  return countLegal(space, state);
}

describe('against going through every path', () => {
  test(
    `${RUNS} spaces and limits: the same frontier, cheapest, quickest and number of legal paths`,
    () => {
      fc.assert(
        fc.property(spaces, ([path, free, kept]) => {
          fc.pre(legalOf(path, free) <= SMALL);
          const all = everyWay(path, free, kept);
          const wanted = unbeaten(all.filter((way) => way.kept).map(({ figures }) => figures));
          const found = searchNow(path, currentEdition, { free, limits: kept })!;
          expect(found.legal).toBe(all.length);
          expect(found.frontier.length).toBe(wanted.length);
          for (const [at, { figures }] of found.frontier.entries()) {
            expect(figures.money).toBeCloseTo(wanted[at]!.money, 6);
            expect(figures.hours).toBeCloseTo(wanted[at]!.hours, 5);
            expect(figures.margin).toBe(wanted[at]!.margin);
          }
          const quickest = Math.min(...wanted.map(({ hours }) => hours));
          if (wanted.length > 0) expect(found.quickest!.figures.hours).toBeCloseTo(quickest, 5);
        }),
        { numRuns: RUNS },
      );
    },
    900_000 * Math.max(1, SMALL / 2000),
  );

  test('where there is none, the smallest sets of limits to relax are those that brute force finds', () => {
    const free = ['control', 'housing', 'cable'];
    const kept: Limit[] = [{ kind: 'money', most: 3000 }, { kind: 'hours', most: 100 }, { kind: 'checks' }];
    const found = searchNow(pathOf({}), currentEdition, { free, limits: kept })!;
    expect(found.frontier).toEqual([]);
    const works = (left: readonly Limit[]): boolean =>
      everyWay(pathOf({}), free, left).some((way) => way.kept);
    const size = found.relax[0]!.length;
    expect(
      found.relax.every((set) => set.length === size && works(kept.filter((limit) => !set.includes(limit)))),
    ).toBe(true);
    for (const limit of kept)
      expect(works(kept.filter((each) => each !== limit))).toBe(
        size === 1 && found.relax.some(([only]) => only === limit),
      );
  });
});

describe('a way through', () => {
  const free = ['carriage-nut', 'axis-motor', 'cross-screw', 'spindle-sensor', 'home-limits'];
  const found = searchNow(pathOf({}), currentEdition, { free, limits: [{ kind: 'checks' }] })!;

  test('opens with exactly its figures', () => {
    expect(found.frontier.length).toBeGreaterThan(2);
    for (const { path, figures } of found.frontier) {
      const report = evaluate(path, currentEdition);
      expect(report.money.p50).toBeCloseTo(figures.money, 6);
      expect(report.money.p80).toBeCloseTo(figures.moneyP80, 6);
      expect(report.hours.p50).toBeCloseTo(figures.hours, 5);
      expect(report.weeksOut.p80).toBeCloseTo(figures.weeksP80, 5);
      expect(report.checks.filter(({ result }) => result === 'stop')).toEqual([]);
      expect(report.choices.filter(({ place, status }) => place === 'guide' && status === 'open')).toEqual(
        [],
      );
    }
  });

  test('says what it changes and why it is no worse than its neighbour', () => {
    for (const [at, { why, changes }] of found.frontier.entries()) {
      for (const { before, after } of changes) expect(before).not.toEqual(after);
      if (at > 0) expect(why).toMatch(/^For \$-?\d+ more than the next cheaper way it .+: .+ for .+\.$/);
    }
  });

  test('the cheapest alone is the first of them', () => {
    const alone = cheapestWay(pathOf({}), currentEdition, { free, limits: [{ kind: 'checks' }] })!;
    expect(alone.figures.money).toBe(found.cheapest!.figures.money);
  });

  test('most paths are decided without being looked at', () => {
    expect(found.visited + found.unvisited).toBe(found.legal);
    expect(found.unvisited).toBeGreaterThan(found.legal / 2);
  });
});

describe('while it runs', () => {
  test('it tells how far it is, never backwards, with the cheapest way early, and stops when told', () => {
    const free = [
      'carriage-nut',
      'axis-motor',
      'cross-screw',
      'spindle-sensor',
      'tool-holding',
      'control',
      'housing',
    ];
    const shares: number[] = [];
    const unproved: number[] = [];
    const proved = new Set<number>();
    const going = searchWays(pathOf({}), currentEdition, { free, limits: [] });
    let step = going.next();
    for (; !step.done; step = going.next()) {
      const { share, cheapest } = step.value;
      shares.push(share);
      if (step.value.proved) proved.add(cheapest!.figures.money);
      else if (cheapest) unproved.push(cheapest.figures.money);
    }
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(unproved).toEqual([...unproved].sort((a, b) => b - a));
    expect([...proved]).toEqual([step.value.cheapest!.figures.money]);
    expect(Math.min(...unproved)).toBeGreaterThanOrEqual([...proved][0]!);
    expect(
      searchNow(pathOf({}), currentEdition, { free, limits: [] }, undefined, () => true),
    ).toBeUndefined();
  });

  test('a free question that is unknown or takes several answers is refused', () => {
    expect(() => searchNow(pathOf({}), currentEdition, { free: ['no-such'], limits: [] })).toThrow(/unknown/);
    expect(() => searchNow(pathOf({}), currentEdition, { free: ['purpose'], limits: [] })).toThrow(/several/);
  });
});
