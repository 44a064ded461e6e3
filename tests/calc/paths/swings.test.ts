// What the totals hang on: choices and unknowns, each alone.
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { effectsOf } from '../../../src/calc/paths/effects.ts';
import { swingKinds } from '../../../src/calc/paths/measures-of-total.ts';
import { swingsOf } from '../../../src/calc/paths/swings.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';

const path = pathOf({});
const report = evaluate(path, currentEdition);
const swings = swingsOf(path, currentEdition);
const unknown = (id: string) => swings.unknowns.find((each) => each.id === id)!;

test('they start from the totals of the report', () => {
  expect(swings.now.money.p50).toBeCloseTo(report.money.p50, 6);
  expect(swings.now.hours.p90).toBeCloseTo(report.hours.p90, 6);
  expect(swings.now.weeks.p10).toBeCloseTo(report.weeksOut.p10, 6);
});

describe('choices', () => {
  test('end at the cheapest and the dearest answer that the strips allow', () => {
    const strips = effectsOf(path, currentEdition);
    for (const { decision, money, hours } of swings.choices) {
      const allowed = strips
        .find((each) => each.decision === decision)!
        .options.filter((option) => option.allowed);
      expect(money.least.by, decision).toBeCloseTo(Math.min(0, ...allowed.map((each) => each.money.p50)), 6);
      expect(money.most.by, decision).toBeCloseTo(Math.max(0, ...allowed.map((each) => each.money.p50)), 6);
      expect(hours.most.by, decision).toBeCloseTo(Math.max(0, ...allowed.map((each) => each.hours.p50)), 6);
    }
  });

  test('a blocked end lies outside the allowed ones and says why', () => {
    const ends = swings.choices.flatMap(({ money }) => [
      { of: money.blockedLeast, beyond: money.least.by, sign: -1 },
      { of: money.blockedMost, beyond: money.most.by, sign: 1 },
    ]);
    const blocked = ends.filter(({ of }) => of !== undefined);
    expect(blocked.length).toBeGreaterThan(0);
    for (const { of, beyond, sign } of blocked) {
      expect(sign * (of!.by - beyond)).toBeGreaterThan(0);
      expect(of!.blocked[0]!.say.length).toBeGreaterThan(10);
    }
  });

  test('weeks out of use are those of the changed path', () => {
    const { weeks } = swings.choices.find(({ decision }) => decision === 'carriage-screw-ends')!;
    const there = evaluate(pathOf({ 'carriage-screw-ends': weeks.most.option }), currentEdition);
    expect(weeks.most.by).toBeGreaterThan(0);
    expect(there.weeksOut.p50 - report.weeksOut.p50).toBeCloseTo(weeks.most.by, 0);
  });
});

describe('unknowns', () => {
  test('the level of prices moves money and no hours; the pace moves hours and no money', () => {
    expect(unknown('market').money.high - unknown('market').money.low).toBeGreaterThan(200);
    expect(unknown('market').hours.high).toBeCloseTo(unknown('market').hours.low, 6);
    expect(unknown('pace').hours.high - unknown('pace').hours.low).toBeGreaterThan(20);
    expect(unknown('pace').money.high).toBeCloseTo(unknown('pace').money.low, 6);
  });

  test('each alone swings less than the whole range, and knowing it never widens it', () => {
    for (const { id, narrows, ...ends } of swings.unknowns) {
      for (const kind of swingKinds) {
        expect(ends[kind].low, id).toBeLessThanOrEqual(ends[kind].high);
        expect(narrows[kind].then, id).toBeLessThanOrEqual(narrows[kind].now);
      }
    }
    expect(unknown('market').narrows.money.then).toBeLessThan(unknown('market').narrows.money.now);
  });

  test('the landed share swings as typing it would', () => {
    const at = (rate: number) =>
      evaluate(pathOf({}, 'medium', { facts: { 'landed-rate': rate } }), currentEdition).money.p50;
    const low = /^(\d+) %/.exec(unknown('landed').lowMeans)![1]!;
    expect(Math.abs(unknown('landed').money.low - at(Number(low) / 100))).toBeLessThan(40);
    expect(
      swingsOf({ ...path, facts: { 'landed-rate': 0.2 } }, currentEdition).unknowns.map(({ id }) => id),
    ).not.toContain('landed');
  });

  test('a big risk adds its own money where it happens', () => {
    const risk = report.risks.find(({ counted }) => counted)!;
    const swing = unknown(risk.id);
    expect(swing.money.high - swing.money.low).toBeGreaterThan(risk.money[0]);
    expect(swing.money.low).toBeLessThanOrEqual(report.money.p50);
    expect(swing.findOut.length).toBeGreaterThan(20);
  });

  test('a figure that is measured is no unknown any more', () => {
    const fact = swings.unknowns.find(({ kind }) => kind === 'fact')!;
    const measured = swingsOf({ ...path, facts: { [fact.id]: 0.2 } }, currentEdition);
    expect(measured.unknowns.map(({ id }) => id)).not.toContain(fact.id);
  });
});
