// A look made by hand: the figures, facts and answers that one check asks for, and nothing else. What the checks say is
// then set against margins that are known beforehand.
import { expect, test } from 'vitest';
import type { Check, CheckRule } from '../../../../src/calc/core/check.ts';
import type { Look } from '../../../../src/calc/core/figure.ts';
import { answered, assumed } from '../../../../src/calc/core/quantity.ts';

type Numbers = Readonly<Record<string, number>>;

/** Everything in SI. What was measured is a fact as well. */
export interface Bench {
  readonly figures?: Numbers;
  readonly facts?: Numbers;
  readonly measured?: Numbers;
  readonly answers?: Readonly<Record<string, string>>;
}

export function lookOf({ figures = {}, facts = {}, measured = {}, answers = {} }: Bench): Look {
  const known = (numbers: Numbers, id: string) => {
    const value = numbers[id];
    return value === undefined ? undefined : assumed(value, '1', 'set for a test');
  };
  const own = (id: string) => (measured[id] === undefined ? undefined : answered(measured[id], '1'));
  return {
    figure: (id) => known(figures, id),
    fact: (id) => own(id) ?? known(facts, id),
    measured: own,
    option: (decision) => answers[decision],
    chosen: (decision, ...options) => options.includes(answers[decision] ?? ''),
  };
}

/** Two benches laid over each other; the second stands where both say something. */
export const over = (under: Bench, upper: Bench): Bench => ({
  figures: { ...under.figures, ...upper.figures },
  facts: { ...under.facts, ...upper.facts },
  measured: { ...under.measured, ...upper.measured },
  answers: { ...under.answers, ...upper.answers },
});

/** The same bench without one figure, fact or measured value. */
export function without(bench: Bench, ...ids: readonly string[]): Bench {
  const left = (numbers: Numbers = {}) =>
    Object.fromEntries(Object.entries(numbers).filter(([id]) => !ids.includes(id)));
  return {
    ...bench,
    figures: left(bench.figures),
    facts: left(bench.facts),
    measured: left(bench.measured),
  };
}

export const finder =
  (rules: readonly CheckRule[]) =>
  (id: string, bench: Bench): Check | undefined => {
    const look = lookOf(bench);
    return rules.map((rule) => rule(look)).find((check) => check?.id === id);
  };

/** One check: how to set a margin, how much is comfortable, and where it does not arise. */
export interface Row {
  readonly id: string;
  /** Which case of it, where there is more than one. */
  readonly when?: string;
  /** The bench on which the check has so many times what it needs. */
  readonly at: (margin: number) => Bench;
  /** 1 where whatever suffices is good. */
  readonly comfort: number;
  readonly sense: Check['sense'];
  readonly absent?: readonly Bench[];
}

/** Holds a check against its margin, just under and just over what is needed and what is comfortable. */
export function judges(rules: readonly CheckRule[], rows: readonly Row[]): void {
  const find = finder(rules);
  const named = rows.map((row) => [row.when ? `${row.id}: ${row.when}` : row.id, row] as const);
  test.each(named)('%s', (_, { id, at, comfort, sense, absent = [] }) => {
    const result = (margin: number) => find(id, at(margin))?.result;
    expect(find(id, at(1.7))?.margin).toBeCloseTo(1.7, 9);
    expect([0.5, 0.999].map(result)).toEqual(['stop', 'stop']);
    expect(result(1.001)).toBe(comfort > 1 ? 'look' : 'ok');
    expect(result(comfort * 1.001)).toBe('ok');
    if (comfort > 1) expect(result(comfort * 0.999)).toBe('look');
    expect(find(id, at(1))?.sense).toBe(sense);
    expect(absent.map((bench) => find(id, bench))).toEqual(absent.map(() => undefined));
    saysWhatToDo(find(id, at(0.5))!);
  });
}

/** A remedy in words, and questions to think over; nothing is missing where both sides are known. */
function saysWhatToDo({ remedy, decisions, label, needs = [] }: Check): void {
  expect(remedy.length).toBeGreaterThan(20);
  expect(label.length).toBeGreaterThan(5);
  expect(decisions.length).toBeGreaterThan(0);
  expect(decisions.filter((id) => !/^[a-z-]+$/.test(id))).toEqual([]);
  expect(needs).toEqual([]);
}
