// What each answer would change, told before it is given.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Path } from '../../../src/calc/core/path.ts';
import type { PriceBook } from '../../../src/calc/core/price-book.ts';
import { differenceOfBuilds } from '../../../src/calc/cost/difference.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { decisions } from '../../../src/calc/guide.ts';
import { effectsOf, effectsOfQuestion, type QuestionStrips } from '../../../src/calc/paths/effects.ts';
import { presentOf } from '../../../src/calc/paths/present.ts';
import { receiptOf } from '../../../src/calc/paths/receipt.ts';
import { currentEdition, editionByName } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';
import { anyPath } from '../../arbitrary.ts';

const CENT = 0.011;

/** The path with an option chosen, ticked or unticked. */
function taken(path: Path, decision: string, option: string): Path {
  const now = evaluate(path, currentEdition).choices.find((choice) => choice.decision === decision)!.options;
  const many = decisions.find(({ id }) => id === decision)!.many === true;
  const ticks = now.includes(option) ? now.filter((each) => each !== option) : [...now, option];
  return { ...path, answers: { ...path.answers, [decision]: many ? ticks : [option] } };
}

function agree(path: Path, { decision, options }: QuestionStrips): void {
  const here = presentOf(path, currentEdition);
  for (const strip of options) {
    if (!strip.allowed || (strip.now && strip.does === 'chosen')) continue;
    const then = taken(path, decision, strip.option);
    if ((then.answers[decision] ?? []).length === 0) continue;
    const there = presentOf(then, currentEdition);
    const money = differenceOfBuilds(here.totals.money, there.totals.money, 100);
    const hours = differenceOfBuilds(here.totals.hours, there.totals.hours, 100);
    const what = `${decision} ${strip.option}`;
    for (const p of ['p10', 'p50', 'p90'] as const) {
      expect(Math.abs(strip.money[p] - money[p]), what).toBeLessThan(CENT);
      expect(Math.abs(strip.hours[p] - hours[p]), what).toBeLessThan(1e-6);
    }
  }
}

describe('the strips', () => {
  test('agree to the cent with evaluating every changed path whole', () => {
    const path = pathOf({});
    for (const strips of effectsOf(path, currentEdition)) agree(path, strips);
  }, 300_000);

  test('agree on any path, open questions and clashes among them', () => {
    fc.assert(
      fc.property(anyPath, fc.nat(), (path, pick) => {
        const all = effectsOf(path, currentEdition);
        if (all.length > 0) agree(path, all[pick % all.length]!);
      }),
      { numRuns: 25 },
    );
  }, 300_000);

  test('an option that cannot be taken says why, and one that can is not blocked', () => {
    for (const { options } of effectsOf(pathOf({}), currentEdition)) {
      for (const { allowed, blocked } of options) if (allowed) expect(blocked).toEqual([]);
    }
    const holes = effectsOf(pathOf({}), currentEdition, ['holes'])[0]!;
    const tailstock = holes.options.find(({ option }) => option === 'motor-tailstock')!;
    expect(tailstock.allowed).toBe(false);
    expect(tailstock.blocked.flatMap(({ clash }) => clash)).toContain('driven-axes');
  });

  test('stand on one scale, and say so where they cannot tell', () => {
    for (const { options, moneyScale } of effectsOf(pathOf({}), currentEdition)) {
      for (const { money, moneySays } of options) {
        expect(money.p10).toBeGreaterThanOrEqual(moneyScale[0]);
        expect(money.p90).toBeLessThanOrEqual(moneyScale[1]);
        if (money.p10 < 0 && money.p90 > 0) expect(moneySays).toBe('unclear');
      }
    }
  });
});

describe('one question in full', () => {
  test('a synchroniser closes the question of the chuck guard and takes risks away', () => {
    const path = pathOf({});
    const control = effectsOfQuestion(path, currentEdition, 'driven-axes')!;
    const alone = control.options.find(({ option }) => option === 'carriage-only')!;
    expect(alone.moves!.closes).toContain('cross-screw');
    expect(alone.moves!.checks.filter(({ after }) => after === 'gone').map(({ check }) => check)).toContain(
      'cross-facing',
    );
    expect(alone.moves!.irreversible).toEqual([]);
  });

  test('open linear steppers raise the risk that steps are lost by one of twenty or more', () => {
    const motor = effectsOfQuestion(pathOf({}), currentEdition, 'axis-motor')!;
    const open = motor.options.find(({ option }) => option === 'open-loop-stepper')!;
    expect(open.moves!.risks.length).toBeGreaterThan(0);
    for (const { before, after } of open.moves!.risks)
      expect(Math.abs(after - before)).toBeGreaterThanOrEqual(0.9);
  });

  test('is told only where the question is asked', () => {
    const path = pathOf({ 'driven-axes': 'carriage-only', compound: 'keep-compound' });
    expect(effectsOfQuestion(path, currentEdition, 'cross-screw')).toBeUndefined();
  });
});

describe('a receipt', () => {
  const before = pathOf({});
  const after = pathOf({ 'axis-motor': 'open-loop-stepper' });
  const receipt = receiptOf(before, after, currentEdition);

  test('names the answer and says what moved, as the strip said before', () => {
    expect(receipt.answers).toEqual([
      { decision: 'axis-motor', before: ['closed-loop-stepper'], after: ['open-loop-stepper'] },
    ]);
    const strip = effectsOf(before, currentEdition, ['axis-motor'])[0]!.options.find(
      ({ option }) => option === 'open-loop-stepper',
    )!;
    expect(receipt.money.p50).toBeCloseTo(strip.money.p50, 1);
    expect(receipt.moneySays).toBe(strip.moneySays);
  });

  test('undoing it is the same the other way round', () => {
    const back = receiptOf(after, before, currentEdition);
    expect(back.money.p50).toBeCloseTo(-receipt.money.p50, 6);
    expect(back.risks.map(({ risk }) => risk)).toEqual(receipt.risks.map(({ risk }) => risk));
  });

  test('of a figure typed in names the figure', () => {
    const typed = receiptOf(before, { ...before, facts: { 'landed-rate': 0.1 } }, currentEdition);
    expect(typed.facts).toEqual(['landed-rate']);
    expect(typed.moneySays).toBe('less');
  });

  test('of newer prices says what they move, each path at its own', () => {
    const old = editionByName('2026-11')!;
    const now = { ...before, edition: currentEdition.edition };
    const { money, hours } = receiptOf({ ...before, edition: '2026-11' }, now, currentEdition, old);
    const typicalOf = (book: PriceBook) => evaluate(before, book).money.p50;
    expect(Math.sign(money.p50)).toBe(Math.sign(typicalOf(currentEdition) - typicalOf(old)));
    expect(money.p50).not.toBe(0);
    expect(receiptOf(now, { ...now, edition: '2026-11' }, old, currentEdition).money.p50).toBeCloseTo(
      -money.p50,
      6,
    );
    expect(hours.p50).toBe(0);
  });
});
