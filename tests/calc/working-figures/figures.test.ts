// Working figures stand where they say, begin within their limits, and are made of registered formulas.
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { formulas } from '../../../src/calc/formulas/registry.ts';
import { exampleOf } from '../../../src/calc/working-figures/figure.ts';
import { workingFigures } from '../../../src/calc/working-figures/list.ts';

const root = join(import.meta.dirname, '..', '..', '..', 'src');
const pages = globSync('content/book/*.mdx', { cwd: root }).map((file) => ({
  topic: file.replace(/^.*[\\/]|\.mdx$/g, ''),
  text: readFileSync(join(root, file), 'utf8'),
}));
const stands = pages.flatMap(({ topic, text }) =>
  [...text.matchAll(/<Working figure="([a-z-]+)" \/>/g)].map(([, id]) => `${topic} ${id}`),
);
const piece = readFileSync(join(root, 'components/book/Working.astro'), 'utf8');

test('every figure stands once, on its own page, and no page names another', () => {
  expect(stands.toSorted()).toEqual(workingFigures.map(({ topic, id }) => `${topic} ${id}`).toSorted());
});

describe.each(workingFigures)('$id', (figure) => {
  test('its page has its island', () => {
    expect(piece).toMatch(new RegExp(`id === '${figure.id}' && <\\w+ client:visible />`));
  });

  test('its formulas are registered', () => {
    expect(figure.formulas.filter((id) => !formulas.some((formula) => formula.id === id))).toEqual([]);
  });

  test('it begins within its limits, on a step', () => {
    for (const { low, high, step, example } of figure.inputs) {
      expect(example).toBeGreaterThanOrEqual(low);
      expect(example).toBeLessThanOrEqual(high);
      expect((example - low) / step).toBeCloseTo(Math.round((example - low) / step), 6);
    }
  });

  test('whatever is put in at the limits, every figure is one, and the sentence names only what there is', () => {
    const ends = [
      exampleOf(figure),
      ...(['low', 'high'] as const).map((end) =>
        Object.fromEntries(figure.inputs.map((input) => [input.id, input[end] / input.written.per])),
      ),
    ];
    for (const values of ends) {
      const { say, rows, curves, mark } = figure.answer(values);
      const names = new Set([...rows, ...figure.inputs].map(({ id }) => id));
      expect([...say.matchAll(/\{(\w+)\}/g)].filter(([, id]) => !names.has(id!))).toEqual([]);
      const all = [
        ...rows.map(({ value }) => value),
        ...mark,
        ...curves.flatMap(({ points }) => points.flat()),
      ];
      expect(all.filter((each) => !Number.isFinite(each))).toEqual([]);
    }
  });
});
