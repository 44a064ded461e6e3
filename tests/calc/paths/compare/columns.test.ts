// Ways and alternatives side by side, and how each pair of them differs in the same builds.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sideBySide } from '../../../../src/calc/choosing.ts';
import { type Compared, comparisonOf, type PairSide } from '../../../../src/calc/comparing.ts';
import { evaluate } from '../../../../src/calc/evaluate.ts';
import { ofTwentyBuilds, sideOf } from '../../../../src/calc/paths/compare/pairs.ts';
import { alternatives } from '../../../../src/content/alternatives.ts';
import { pathOf, referencePaths } from '../../../../src/content/reference-paths.ts';
import { bookOf, partingIn } from './pairs-of-paths.ts';

const path = pathOf({});
const asPath = (own: typeof path): Compared => ({ kind: 'path', path: own });
const frugal = referencePaths.find(({ id }) => id === 'frugal')!.path;
const compare = (columns: readonly Compared[]) => comparisonOf(columns, bookOf, alternatives);

describe('a column', () => {
  const four = compare([
    asPath(path),
    asPath(frugal),
    { kind: 'alternative', id: 'thread-synchroniser' },
    { kind: 'alternative', id: 'second-lathe' },
  ]);
  const [own, , synchroniser, second] = four.columns;

  test('of a path is its report', () => {
    const report = evaluate(path, bookOf(path.edition));
    for (const kind of ['money', 'hours', 'weeksOut'] as const) {
      expect(own![kind].p50).toBe(report[kind].p50);
      expect(own![kind].twenty).toEqual(report[kind].twenty);
    }
    const counted = report.risks.filter((risk) => risk.counted);
    expect(own!.risks.map(({ id }) => id)).toEqual(counted.slice(0, 5).map(({ id }) => id));
    const { ok, look, stop, open } = own!.checks!;
    expect(ok + look.length + stop.length + open).toBe(report.checks.length);
    const tasks = report.stages.flatMap((stage) => stage.tasks);
    expect(own!.final.map(({ task }) => task).sort()).toEqual(
      tasks
        .filter(({ undo }) => undo === 'cannot-be-undone')
        .map(({ id }) => id)
        .sort(),
    );
    expect(own!.stops.map(({ id }) => id)).toEqual(report.stages.flatMap(({ stop: at }) => at?.id ?? []));
    expect(own!.yearly).toEqual(report.yearly);
  });

  test('names the answers that ask for its hardest skill', () => {
    expect(own!.skill.level).toBe(4);
    expect(own!.skill.asks).toContainEqual({ decision: 'control', option: 'motion-card-pc' });
  });

  test('of an alternative is what the page of alternatives shows beside the first path', () => {
    const side = sideBySide(path, bookOf(path.edition), alternatives);
    for (const column of [synchroniser!, second!]) {
      const shown = side.alternatives.find(({ id }) => id === column.alternative!.id)!;
      for (const key of ['money', 'hours', 'weeksOut', 'perYear', 'abilities'] as const)
        expect(column[key]).toEqual(shown[key]);
      expect(column.alternative!.first).toBe(shown.first);
    }
    expect(second!.checks).toBeUndefined();
    expect(synchroniser!.checks!.ok).toBeGreaterThan(0);
  });

  test('a fee that is paid every year stands by the year', () => {
    const drawn = pathOf({ 'program-making': 'drawing-to-path' });
    const { columns } = compare([asPath(drawn), asPath({ ...drawn, owned: ['drawing-software'] })]);
    const reports = columns.map((column) => evaluate(column.path!, bookOf(column.edition)));
    expect(columns[0]!.yearly[2]).toBeGreaterThan(0);
    expect(columns.map(({ yearly }) => yearly)).toEqual(reports.map(({ yearly }) => yearly));
  });

  test('stands at the prices of its own edition, and it is said', () => {
    expect(four.editionsDiffer).toBe(false);
    const old = { ...path, edition: '2026-11' };
    const both = compare([asPath(path), asPath(old)]);
    expect(both.editionsDiffer).toBe(true);
    expect(both.columns[1]!.money.p50).toBe(evaluate(old, bookOf('2026-11')).money.p50);
  });

  test('is plain data', () => expect(structuredClone(four)).toEqual(four));

  test('has every pair once, the earlier column first', () => {
    const places = four.pairs.map(({ a, b }) => `${a}${b}`);
    expect(places).toEqual(['01', '02', '03', '12', '13', '23']);
  });

  test('a comparison without a path, and an alternative that nobody knows, are mistakes', () => {
    expect(() => compare([{ kind: 'alternative', id: 'second-lathe' }])).toThrow('at least one path');
    expect(() => compare([asPath(path), { kind: 'alternative', id: 'a-donkey' }])).toThrow('a-donkey');
  });
});

const mirrored = (side: PairSide): PairSide => ({
  above: side.below,
  below: side.above,
  same: side.same,
  from: 0 - side.to,
  to: 0 - side.from,
  p10: 0 - side.p90,
  p50: 0 - side.p50,
  p90: 0 - side.p10,
  reading: side.reading === 'tie' ? 'tie' : side.reading === 'above' ? 'below' : 'above',
  twenty: side.twenty.map((value) => 0 - value).reverse(),
});

describe('a pair', () => {
  test('counts twenty builds, and is the same the other way round with its signs turned', () => {
    fc.assert(
      fc.property(partingIn(0, 4), ([a, b]) => {
        const [there] = compare([asPath(a), asPath(b)]).pairs;
        const [back] = compare([asPath(b), asPath(a)]).pairs;
        for (const kind of ['money', 'hours'] as const) {
          const { above, below, same, from, to, p10, p90 } = there![kind];
          expect(above + below + same).toBe(20);
          expect(Math.min(above, below, same)).toBeGreaterThanOrEqual(0);
          expect(p10 <= from && from <= to && to <= p90).toBe(true);
          expect(back![kind]).toEqual(mirrored(there![kind]));
        }
      }),
      { numRuns: 30 },
    );
  });

  test('of a path with itself is a tie in every build', () => {
    const [{ money, hours }] = compare([asPath(path), asPath(path)]).pairs as [never];
    for (const side of [money, hours] as PairSide[]) {
      expect(side).toMatchObject({ above: 0, below: 0, same: 20, p10: 0, p90: 0, reading: 'tie' });
    }
  });

  test('is a tie where the middle sixteen of twenty reach both sides of nothing', () => {
    const nothing = new Float64Array(2000);
    const ramp = (low: number, high: number) =>
      Float64Array.from({ length: 2000 }, (_, build) => Math.round(low + ((high - low) * build) / 1999));
    expect(sideOf(ramp(-9000, 27_000), nothing)).toMatchObject({
      above: 15,
      below: 5,
      same: 0,
      reading: 'tie',
    });
    expect(sideOf(ramp(-1000, 99_000), nothing).reading).toBe('above');
    expect(sideOf(nothing, ramp(-1000, 99_000)).reading).toBe('below');
  });

  test('shares twenty out over any counts, alike on either side', () => {
    const counts = fc.tuple(fc.nat(2000), fc.nat(2000)).filter(([above, below]) => above + below <= 2000);
    fc.assert(
      fc.property(counts, ([above, below]) => {
        const [more, less] = ofTwentyBuilds(above, below, 2000);
        expect(ofTwentyBuilds(below, above, 2000)).toEqual([less, more]);
        expect(more + less).toBeLessThanOrEqual(20);
        expect(Math.abs(more - above / 100)).toBeLessThan(1);
        expect(Math.abs(less - below / 100)).toBeLessThan(1);
      }),
      { numRuns: 2000 },
    );
  });
});
