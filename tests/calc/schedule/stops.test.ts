// Places to stop: what has gone in by then, what could be sold again, and what stages cost more.
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { resaleShare, usedUpParts } from '../../../src/calc/schedule/resale.ts';
import { parts } from '../../../src/calc/trade.ts';
import { calendarOf, ruleOfThumb, stagedOrAtOnce, stoppingPoints } from '../../../src/calc/working.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf, referencePaths } from '../../../src/content/reference-paths.ts';

const reference = referencePaths[0]!.path;
const both = stagedOrAtOnce(reference, currentEdition);
const at = (stops: typeof both.inStages, id: string) => stops.find((stop) => stop.id === id)!;

describe.each([
  ['in stages', both.inStages, pathOf({ 'order-of-work': 'in-stages' })],
  ['all at once', both.atOnce, reference],
] as const)('%s', (_, stops, path) => {
  test('each stop has the work, the hours and the weeks of the one before, and more', () => {
    for (const [place, stop] of stops.entries()) {
      const before = stops[place - 1];
      if (!before) continue;
      expect(stop.tasks).toEqual(expect.arrayContaining([...before.tasks]));
      for (const of of ['hours', 'weeks', 'money'] as const) {
        expect(stop[of].p50).toBeGreaterThanOrEqual(before[of].p50);
      }
    }
  });

  test('what is ordered is at least what is needed, and selling brings less than it cost', () => {
    for (const { money, ordered, resale } of stops) {
      expect(ordered.p50).toBeGreaterThanOrEqual(money.p50);
      expect(resale[2]).toBeLessThanOrEqual(ordered.p90);
    }
  });

  test('at the last stop everything is in', () => {
    const report = evaluate(path, currentEdition);
    const last = stops.at(-1)!;
    expect(last.money.p50).toBeCloseTo(report.money.p50, 2);
    expect(last.hours.p50).toBeCloseTo(report.hours.p50, 6);
    expect(last.tasks.length).toBe(report.order.length);
    expect(last.weeks.p50).toBeCloseTo(calendarOf(path, currentEdition).weeks.p50, 9);
  });
});

test('in stages the carriage runs on less money, fewer hours and sooner than all at once', () => {
  const [staged, once] = [at(both.inStages, 'stop-carriage'), at(both.atOnce, 'stop-carriage')];
  expect(staged.money.p50).toBeLessThan(once.money.p50);
  expect(staged.ordered.p50).toBeLessThan(once.ordered.p50);
  expect(staged.weeks.p50).toBeLessThan(once.weeks.p50);
  expect(staged.tasks).not.toContain('cross-brackets');
  expect(once.tasks).toContain('cross-brackets');
});

test('stages cost more hours in every build: the 8 to 26 that the trade says, and a second round of parcels', () => {
  const { hours, money, weeks } = both.extra;
  expect(hours.p10).toBeGreaterThan(8);
  expect(hours.p90).toBeLessThan(26);
  expect(money.p10).toBeGreaterThan(0);
  expect(weeks.p10).toBeGreaterThan(0);
});

test('a lathe that stays whole has its stops before and after only', () => {
  const stops = stoppingPoints(referencePaths[1]!.path, currentEdition);
  expect(stops[0]!.id).toBe('stop-decided');
  expect(stops[0]!.money.p50).toBe(0);
  expect(stops.at(-1)!.id).toBe('stop-proved');
});

test('what is used up brings nothing, and only parts that exist are named', () => {
  const ids = new Set(parts.map((part) => part.id));
  expect(usedUpParts.filter((id) => !ids.has(id))).toEqual([]);
  expect(resaleShare('ferrites', false)).toEqual([0, 0, 0]);
  expect(resaleShare('closed-set-57', false)[1]).toBeGreaterThan(resaleShare('closed-set-57', true)[1]);
});

describe.each([6, 12])('the trade’s rule of thumb, %d hours a week', (hours) => {
  const path = { ...reference, facts: { 'hours-per-week': hours } };
  const told = ruleOfThumb(evaluate(path, currentEdition), calendarOf(path, currentEdition));

  test('it and the builds agree within a tenth', () => {
    expect(Math.abs(told.ours / told.rule - 1)).toBeLessThan(0.1);
  });

  test('the terms explain the whole difference', () => {
    const { rule, ours, lostSessions, leaning, trouble, waitingInRule, waitingInBuilds } = told;
    expect(rule - ours).toBeCloseTo(lostSessions - leaning - trouble + waitingInRule - waitingInBuilds, 9);
  });

  test('each adds up from the likely hours', () => {
    const { rule, ours, likely, lostSessions, leaning, trouble, waitingInRule, waitingInBuilds } = told;
    expect(likely + lostSessions + waitingInRule).toBeCloseTo(rule, 9);
    expect(likely + leaning + trouble + waitingInBuilds).toBeCloseTo(ours, 9);
  });

  test('its lost sessions are our troubles and long estimates under another name', () => {
    expect(Math.abs((told.leaning + told.trouble) / told.lostSessions - 1)).toBeLessThan(0.1);
    expect(told.waitingInBuilds).toBeGreaterThan(1);
    expect(told.waitingInBuilds).toBeLessThan(6);
  });
});
