import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/calc/evaluate.ts';
import { type Explanation, whyNumber } from '../../src/calc/why-number.ts';
import { currentEdition } from '../../src/content/edition.ts';
import { inventedOwners } from '../../src/content/invented-owners.ts';
import { referencePaths } from '../../src/content/reference-paths.ts';

const paths = [...referencePaths, ...inventedOwners];

/** Every node of an explanation. */
const nodes = (root: Explanation): Explanation[] => [
  root,
  ...root.inputs.flatMap(({ parts }) => parts.flatMap(nodes)),
];

const sound = (found: Explanation | undefined): void => {
  expect(found).toBeDefined();
  for (const { title, say, value } of nodes(found!)) {
    expect(title.length).toBeGreaterThan(1);
    expect(say).toMatch(/[.!?”]$/);
    expect(say).not.toMatch(/undefined|NaN|\.\./);
    expect(Number.isFinite(value)).toBe(true);
  }
};

describe.each(paths.map(({ id, path }) => [id, path] as const))('%s', (_, path) => {
  const report = evaluate(path, currentEdition);

  test('both sides of every check that is judged can be explained', () => {
    for (const { id, value, limit } of report.checks) {
      if (value) sound(whyNumber(path, currentEdition, { kind: 'check', id, side: 'value' }));
      if (limit) sound(whyNumber(path, currentEdition, { kind: 'check', id, side: 'limit' }));
    }
  });

  test('totals and risks can be explained, and show the figure of the report', () => {
    const money = whyNumber(path, currentEdition, { kind: 'total', id: 'money' });
    expect(money?.value).toBe(report.money.p50);
    sound(money);
    sound(whyNumber(path, currentEdition, { kind: 'total', id: 'hours' }));
    sound(whyNumber(path, currentEdition, { kind: 'total', id: 'weeks-out' }));
    for (const { id } of report.risks) sound(whyNumber(path, currentEdition, { kind: 'risk', id }));
  });

  test('the means of the money add up to its mean', () => {
    const money = whyNumber(path, currentEdition, { kind: 'total', id: 'money' })!;
    const sum = money.inputs.reduce((total, { parts }) => total + parts[0]!.value, 0);
    expect(sum).toBeCloseTo(report.money.mean, 6);
  });
});

test('a chain ends at what the owner typed, with the place to change it', () => {
  const path = { ...referencePaths[0]!.path, facts: { 'spindle-power': 550 } };
  const found = whyNumber(path, currentEdition, { kind: 'figure', id: 'machine-current' });
  const typed = nodes(found!).find(({ origin }) => origin === 'answered');
  expect(typed?.change).toEqual({ fact: 'spindle-power' });
  expect(typed?.value).toBe(550);
});

test('what does not arise on the path has no explanation', () => {
  const path = referencePaths[0]!.path;
  expect(
    whyNumber(path, currentEdition, { kind: 'check', id: 'gang-travel', side: 'value' }),
  ).toBeUndefined();
});
