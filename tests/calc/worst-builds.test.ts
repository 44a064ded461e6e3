import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyPath } from '../../src/calc/core/path.ts';
import { baseOf, reasonsOf } from '../../src/calc/cost/build-reasons.ts';
import { resolve } from '../../src/calc/cost/builds.ts';
import { editionOf } from '../../src/calc/cost/edition.ts';
import { ordersOf } from '../../src/calc/cost/orders.ts';
import { totalsOf } from '../../src/calc/cost/totals.ts';
import { wantedOf } from '../../src/calc/cost/wanted.ts';
import { planState, waysOf } from '../../src/calc/cost/ways.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { machineOf } from '../../src/calc/facts.ts';
import { type WorstBuild, worstBuilds } from '../../src/calc/worst-builds.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';
import { boughtOn } from '../purchases.ts';

const [reference] = referencePaths;

function checkSums(builds: readonly WorstBuild[]): void {
  for (const { above, reasons, rest } of builds) {
    expect(reasons.reduce((sum, { cents }) => sum + cents, rest)).toBe(above);
    const sizes = reasons.map(({ cents }) => Math.abs(cents));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    for (const size of sizes) expect(size).toBeGreaterThanOrEqual(1000);
    expect(reasons.length).toBeLessThanOrEqual(3);
  }
  const money = builds.map((build) => build.money);
  expect([...money].sort((a, b) => b - a)).toEqual(money);
}

describe('the worst builds', () => {
  test('are the dearest of the twenty that are shown', () => {
    const { twenty } = evaluate(reference!.path, currentEdition).money;
    const builds = worstBuilds(reference!.path, currentEdition);
    expect(builds.map(({ place }) => place)).toEqual([20, 19, 18, 17, 16]);
    for (const { place, money } of builds) {
      // The screen shows a quantile between two builds; the build itself is one of the two.
      expect(Math.abs(money / 100 - twenty[place - 1]!)).toBeLessThan(0.01 * twenty[place - 1]!);
    }
  });

  test('reasons and rest add up to what a build costs beyond average prices, with every question open too', () => {
    checkSums(worstBuilds(reference!.path, currentEdition, 20));
    checkSums(worstBuilds(emptyPath(currentEdition.edition), currentEdition, 20));
    fc.assert(
      fc.property(boughtOn(reference!.path), (path) => checkSums(worstBuilds(path, currentEdition, 3))),
      { numRuns: 100, seed: 2 },
    );
  }, 300_000);

  test('the reasons of all kinds together leave nothing unexplained on a settled path', () => {
    const [worst] = worstBuilds(reference!.path, currentEdition, 1);
    expect(worst!.reasons.some(({ kind }) => kind === 'risk')).toBe(true);
    expect(worst!.above).toBeGreaterThan(0);
    expect(worst!.reasons.every(({ kind }) => kind !== 'answers')).toBe(true);
  });

  test('the cheapest says what made it cheap', () => {
    const cheapest = worstBuilds(reference!.path, currentEdition, 20).at(-1)!;
    expect(cheapest.reasons[0]!.cents).toBeLessThan(0);
    expect(cheapest.reasons[0]!.say).toMatch(/^shop prices \d+ % below the usual/);
  });

  test('with a flat allowance no risk is named', () => {
    for (const { reasons } of worstBuilds({ ...reference!.path, allowance: 0.1 }, currentEdition, 20))
      expect(reasons.filter(({ kind }) => kind === 'risk')).toEqual([]);
  });
});

test('all reasons of a build together are exactly what it costs beyond the base', () => {
  for (const { path } of referencePaths) {
    const edition = editionOf(currentEdition);
    const machine = machineOf(path.size, path.facts);
    const plan = planState(path, machine);
    const orders = ordersOf(wantedOf(plan.state, machine, edition.book), path, edition);
    const totals = totalsOf(waysOf(path, plan, currentEdition.seed), machine, path, edition, orders);
    const way = resolve(plan.state, machine, path, edition, orders);
    const base = baseOf(totals);
    for (const build of [0, 77, 1234, 1999]) {
      const sum = reasonsOf(totals, way, edition, base, build).reduce((all, { cents }) => all + cents, 0);
      expect(sum).toBe(totals.money[build]! - base.goods - base.landed - base.credits);
    }
  }
});
