// The design over the whole input space: every figure finite, every step of an explanation known.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checksOf } from '../../src/calc/checks.ts';
import type { Quantity } from '../../src/calc/core/quantity.ts';
import { steps } from '../../src/calc/core/steps.ts';
import { planState } from '../../src/calc/cost/ways.ts';
import { designFigures, designOf } from '../../src/calc/design.ts';
import { machineOf } from '../../src/calc/facts.ts';
import { formulas } from '../../src/calc/formulas/registry.ts';
import { figures, rules } from '../../src/calc/trade.ts';
import { anyPath } from '../arbitrary.ts';
import { quickly } from '../cases.ts';

const knownSteps = new Set([...formulas.map(({ id }) => id), ...Object.keys(steps)]);

/** Every quantity that a quantity was made from, itself included; one that several share is looked at once. */
function explainable(quantity: Quantity, seen: Set<Quantity>): void {
  if (seen.has(quantity)) return;
  seen.add(quantity);
  if (!Number.isFinite(quantity.value)) expect(quantity).toHaveProperty('value', 'a finite figure');
  if (quantity.origin.kind !== 'derived') return;
  if (!knownSteps.has(quantity.origin.formula)) expect(knownSteps).toContain(quantity.origin.formula);
  for (const input of Object.values(quantity.origin.inputs).flat()) {
    if (typeof input !== 'string') explainable(input as Quantity, seen);
  }
}

test('ids of figures are unique and kebab-case', () => {
  expect(new Set(figures.map(({ id }) => id)).size).toBe(figures.length);
  for (const { id } of figures) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
});

test('1,000 random paths: figures and checks are finite and can be explained', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const look = designOf(planState(path, machineOf(path.size, path.facts)).state);
      const seen = new Set<Quantity>();
      for (const { value } of designFigures(look)) explainable(value, seen);
      for (const { value, limit, limitLow, margin, result } of checksOf(look)) {
        for (const quantity of [value, limit, limitLow]) if (quantity) explainable(quantity, seen);
        if (margin === undefined) expect(result).toBe('not-yet');
        else expect(Number.isFinite(margin)).toBe(true);
      }
    }),
    { numRuns: quickly(1000) },
  );
}, 300_000);

test('a check that a rule points at is one that exists, and no check is made twice', () => {
  const seen = new Set<string>();
  for (const path of fc.sample(anyPath, { numRuns: 400, seed: 3 })) {
    const ids = checksOf(designOf(planState(path, machineOf(path.size, path.facts)).state)).map(
      ({ id }) => id,
    );
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) seen.add(id);
  }
  const pointedAt = rules.flatMap(({ then }) =>
    then.flatMap((effect) => (effect.kind === 'addsCheck' ? [effect.check] : [])),
  );
  expect(pointedAt.filter((id) => !seen.has(id))).toEqual([]);
}, 300_000);

// A judgement of the trade, written down so that none falls out unnoticed.
const keepFromHarm = [
  'axis-cable',
  'bar-overhang',
  'chuck-speed',
  'drive-discharged',
  'earth-leakage',
  'mains-cord',
  'nose-torque',
  'program-speed-clamp',
  'second-earth',
  'spindle-cable',
  'stop-grade',
  'stop-table',
  'supply-current',
  'watchdog',
];

test('what keeps people from harm says so on every path, and nothing else does', () => {
  const seen = new Set<string>();
  for (const path of fc.sample(anyPath, { numRuns: 300, seed: 4 }))
    for (const { id, harm } of checksOf(designOf(planState(path, machineOf(path.size, path.facts)).state))) {
      expect(harm ?? false, id).toBe(keepFromHarm.includes(id));
      seen.add(id);
    }
  expect(keepFromHarm.filter((id) => !seen.has(id))).toEqual([]);
}, 300_000);
