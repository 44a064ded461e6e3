// Which questions carry most, and how many ways the free ones make.
import { describe, expect, test } from 'vitest';
import {
  carriedBy,
  countWays,
  effectsOf,
  type QuestionStrips,
  searchNow,
} from '../../../src/calc/choosing.ts';
import { evaluate } from '../../../src/calc/evaluate.ts';
import { decisionById } from '../../../src/calc/guide.ts';
import { currentEdition } from '../../../src/content/edition.ts';
import { pathOf } from '../../../src/content/reference-paths.ts';

const path = pathOf({});
const carried = carriedBy(path, currentEdition);

describe('questions by what they carry', () => {
  test('only choices with one answer that are asked on the path', () => {
    const { choices } = evaluate(path, currentEdition);
    for (const { decision } of carried) {
      expect(decisionById(decision)).toMatchObject({ place: 'guide', open: 'options' });
      expect(decisionById(decision)?.many).not.toBe(true);
      expect(choices.find((choice) => choice.decision === decision)?.status).not.toBe('not-asked');
    }
    expect(carried.map(({ decision }) => decision)).not.toContain('which-lathe');
  });

  test('the reach of a question is what its answers lie apart, as the strips say', () => {
    const [{ options }] = effectsOf(path, currentEdition, ['cable']) as [QuestionStrips];
    const typical = options.filter(({ allowed }) => allowed).map(({ money }) => money.p50);
    const { money } = carried.find(({ decision }) => decision === 'cable')!;
    expect(money).toBeCloseTo(Math.max(0, ...typical) - Math.min(0, ...typical), 6);
    expect(money).toBeGreaterThan(0);
  });

  test('those that carry most come first', () => {
    const weights = carried.map(({ money, hours }) => money + 10 * hours);
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
  });
});

test('the ways counted are the ways the search decides; nothing free leaves one', () => {
  const free = ['cable', 'tool-holding', 'spindle-motor'];
  const found = searchNow(path, currentEdition, { free, limits: [] })!;
  expect(countWays(path, currentEdition, free)).toBe(found.legal);
  expect(countWays(path, currentEdition, [])).toBe(1);
});
