import { describe, expect, test } from 'vitest';
import type { Moved, MovedCheck, MovedRisk, OptionEffect } from '../../src/calc/choosing.ts';
import {
  effectLines,
  hoursEnds,
  moneyEnds,
  sayChecks,
  sayHours,
  sayInShort,
  sayMoney,
  sayRisks,
} from '../../src/islands/guide/effect-words.ts';
import { AXIS, placeOn, risksBy, scaleOf } from '../../src/islands/guide/strip-scale.ts';
import { saySwing } from '../../src/islands/quick/WideBecause.tsx';

const by = (p10: number, p50: number, p90: number) => ({ p10, p50, p90 });

describe('money and hours', () => {
  test('a clear difference is a range with what is typical', () => {
    expect(sayMoney(by(-690, -600, -530), 'less')).toBe('$530–690 less, typically $600');
    expect(sayMoney(by(380, 520, 760), 'more')).toBe('$380–760 more, typically $520');
    expect(sayHours(by(-14, -9, -6), 'less')).toBe('6–14 h less, typically 9 h');
  });

  test('ends that round to one figure are one figure', () => {
    expect(sayMoney(by(601, 602, 603), 'more')).toBe('$600 more');
    expect(sayHours(by(3, 3, 3), 'more')).toBe('3 h more');
  });

  test('a range that starts at nothing says up to, and what is typical even when that is nothing', () => {
    expect(sayMoney(by(0, 0, 937), 'more')).toBe('up to $940 more, typically nothing');
    expect(sayMoney(by(-1650, -833, 0), 'less')).toBe('up to $1,700 less, typically $830');
  });

  test('what rounds to nothing is still more or less', () => {
    expect(sayMoney(by(1, 2, 3), 'more')).toBe('under $10 more');
    expect(sayHours(by(-0.04, -0.02, -0.01), 'less')).toBe('under 0.1 h less');
  });

  test('across nothing there is no clear difference, and the ends are said beside it', () => {
    expect(sayMoney(by(-160, -20, 90), 'unclear')).toBe('no clear difference');
    expect(moneyEnds(by(-160, -20, 90))).toBe('−$160 to +$90');
    expect(hoursEnds(by(-2, 1, 5))).toBe('−2 h to +5 h');
    expect(sayMoney(by(0, 0, 0), 'same')).toBe('no change');
  });
});

const risk = (name: string, before: number, after: number, injury = false): MovedRisk => ({
  risk: name,
  name,
  before,
  after,
  injury,
});

describe('risks', () => {
  test('rising ones come first, of them those that can injure; three are named, the rest counted', () => {
    const said = sayRisks([
      risk('Falls far', 9, 1),
      risk('Falls', 8, 4),
      risk('Rises', 2, 8),
      risk('Hurts', 1, 2.4, true),
    ]);
    expect(said).toBe(
      'Hurts 1 to 2 of 20 (can injure); Rises 2 to 8 of 20; Falls far 9 to 1 of 20; and 1 more change',
    );
  });

  test('none is no change', () => expect(sayRisks([])).toBe('no change'));
});

const check = (label: string, before: MovedCheck['before'], after: MovedCheck['after']): MovedCheck => ({
  check: label,
  label,
  before,
  after,
});

test('checks: the grave ones by name, many others counted', () => {
  const said = sayChecks([
    check('Fit', 'ok', 'gone'),
    check('Heat', 'look', 'ok'),
    check('Speed', 'ok', 'look'),
    check('Supply', 'gone', 'stop'),
    check('Nose', 'ok', 'gone'),
    check('Gap', 'ok', 'gone'),
  ]);
  expect(said).toBe('1 to stop at: Supply; 1 to look at: Speed; 1 now ok: Heat; 3 gone');
});

const still: Moved = {
  risks: [],
  checks: [],
  opens: [],
  closes: [],
  blocks: [],
  frees: [],
  forces: [],
  irreversible: [],
};
const effect = (more: Partial<OptionEffect> = {}): OptionEffect => ({
  option: 'a',
  now: false,
  does: 'chosen',
  blocked: [],
  allowed: true,
  money: by(0, 0, 0),
  moneySays: 'same',
  hours: by(0, 0, 0),
  hoursSays: 'same',
  follows: [],
  moves: still,
  ...more,
});

describe('the rest of a strip', () => {
  test('what cannot be undone comes first, then what is set, each with its own words', () => {
    const lines = effectLines({
      ...still,
      forces: [{ decision: 'cable', before: ['unscreened-wire'], after: ['screened-cable'] }],
      irreversible: [{ task: 't', name: 'Cut the apron' }],
    });
    expect(lines.map(({ lead }) => lead)).toEqual(['Cannot be undone', 'Also sets']);
    expect(lines[0]?.text).toBe('Cut the apron.');
    expect(lines[1]?.text).toMatch(/^.+ to “.+”\.$/);
  });

  test('in one breath', () => {
    expect(sayInShort(effect({ now: true, moves: undefined }))).toBe('The plan as it is.');
    expect(sayInShort(effect({ allowed: false }))).toBe('');
    const moves = { ...still, risks: [risk('a', 1, 3), risk('b', 5, 1), risk('c', 5, 2)] };
    expect(sayInShort(effect({ money: by(-690, -600, -530), moneySays: 'less', moves }))).toBe(
      'Money: $530–690 less, typically $600; hours: no change; 1 risk up; 2 risks down.',
    );
  });
});

describe('the scale of a question', () => {
  const question = {
    decision: 'q',
    status: 'open',
    options: [effect({ moves: { ...still, risks: [risk('a', 8, 4), risk('b', 2, 3)] } })],
    moneyScale: [-690, 90],
    hoursScale: [0, 0],
  } as const;

  test('has round ends alike on both sides, and none where nothing moves', () => {
    expect(scaleOf(question)).toEqual({ money: 1000, hours: undefined, risks: 10 });
    expect(risksBy(question.options[0])).toEqual({ up: 1, down: 4 });
  });

  test('puts nothing in the middle and its ends inside the drawing', () => {
    expect(placeOn(0, 1000)).toBe(AXIS / 2);
    expect(placeOn(-1000, 1000)).toBeGreaterThan(0);
    expect(placeOn(1000, 1000)).toBeLessThan(AXIS);
  });
});

test('what an open question may still do is said from both ends', () => {
  const swing = (least: number, most: number) =>
    saySwing({
      money: { least: { option: 'a', by: least, blocked: [] }, most: { option: 'b', by: most, blocked: [] } },
    } as unknown as Parameters<typeof saySwing>[0]);
  expect(swing(-982, 445)).toBe('from $980 less to $450 more than the plan takes now');
  expect(swing(0, 2169)).toBe('up to $2,200 more than the plan takes now');
  expect(swing(-1382, 0)).toBe('up to $1,400 less than the plan takes now');
  expect(swing(0, 0)).toBe('little in money');
});
