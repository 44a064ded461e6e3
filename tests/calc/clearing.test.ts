// What single other answer clears a check, and what it does to money and hours in the same builds.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyPath, type Path } from '../../src/calc/core/path.ts';
import { planState } from '../../src/calc/cost/ways.ts';
import { evaluate, type WayToClear, waysToClear } from '../../src/calc/evaluate.ts';
import { machineOf } from '../../src/calc/facts.ts';
import { decisions } from '../../src/calc/guide.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { pathOf } from '../../src/content/reference-paths.ts';
import { anyPath } from '../arbitrary.ts';
import { quickly } from '../cases.ts';

const ways = (path: Path, check: string): WayToClear[] => waysToClear(path, currentEdition, check);

/** The path with the change made. */
function taken(path: Path, { decision, option, ticked }: WayToClear): Path {
  const many = decisions.find(({ id }) => id === decision)!.many === true;
  const state = evaluate(path, currentEdition).choices.find((choice) => choice.decision === decision)!;
  const now = state.options;
  const answer = !many ? [option] : ticked ? [...now, option] : now.filter((each) => each !== option);
  return { ...path, answers: { ...path.answers, [decision]: answer } };
}

const smallOutlet = pathOf({}, 'medium', { facts: { 'outlet-amps': 10 } });

describe('an outlet that is too small', () => {
  const found = ways(smallOutlet, 'supply-current');

  test('is cleared by a new circuit, before anything that only makes it better', () => {
    expect(found[0]).toMatchObject({ decision: 'supply-circuit', option: 'new-circuit', clears: true });
    expect(found.map(({ clears }) => clears)).toEqual(
      [...found.map(({ clears }) => clears)].sort((a, b) => Number(b) - Number(a)),
    );
  });

  test('costs more money, in the same builds: the difference is far narrower than the total', () => {
    const { money } = found[0]!;
    expect(money.p10).toBeGreaterThan(0);
    expect(money.p10).toBeLessThan(money.p50);
    expect(money.p50).toBeLessThan(money.p90);
    const total = evaluate(smallOutlet, currentEdition).money;
    expect(money.p90 - money.p10).toBeLessThan((total.p90 - total.p10) / 2);
  });

  test('every way does what it says when it is taken', () => {
    expect(found.length).toBeGreaterThan(1);
    for (const way of found) {
      const then = evaluate(taken(smallOutlet, way), currentEdition);
      const check = then.checks.find(({ id }) => id === 'supply-current');
      expect(check?.result ?? 'gone', way.option).toBe(way.result);
      expect(check?.margin).toBe(way.margin);
    }
  });
});

test('a figure of the lathe is never offered as a way out: nobody is told to take a safety device away', () => {
  const found = ways(pathOf({ 'ground-fault-device': 'trips-at-5-ma' }), 'earth-leakage');
  expect(found.length).toBeGreaterThan(0);
  for (const { decision } of found) expect(decision).not.toBe('ground-fault-device');
});

test('nothing is offered for a check in order, for one that waits for a figure, or for one that does not arise', () => {
  expect(ways(pathOf({}), 'supply-current')).toEqual([]);
  expect(ways(pathOf({}), 'stop-table')).toEqual([]);
  expect(ways(pathOf({}), 'gang-travel')).toEqual([]);
});

test('leaving the switches out is no way to clear the homing check', () => {
  const found = ways(emptyPath(currentEdition.edition), 'cross-homing');
  expect(found.map(({ option }) => option)).toEqual(['home-and-motor-mark']);
});

test('8 random paths: each way stands beside the answers given, is finished, and is finite', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const before = planState(path, machineOf(path.size, path.facts)).status;
      for (const { id, result } of evaluate(path, currentEdition).checks) {
        if (result !== 'stop' && result !== 'look') continue;
        for (const way of ways(path, id)) {
          const after = taken(path, way);
          const { status } = planState(after, machineOf(path.size, path.facts));
          before.forEach((was, at) => {
            if (was === 'answered') expect(status[at], decisions[at]!.id).not.toBe('clash');
          });
          const option = decisions
            .find((decision) => decision.id === way.decision)!
            .options.find((each) => each.id === way.option)!;
          expect(option.incomplete).toBeUndefined();
          for (const { p10, p50, p90 } of [way.money, way.hours]) {
            expect(p10).toBeLessThanOrEqual(p50);
            expect(p50).toBeLessThanOrEqual(p90);
          }
        }
      }
    }),
    { numRuns: quickly(8) },
  );
}, 300_000);
