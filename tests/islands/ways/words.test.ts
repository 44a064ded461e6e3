import { afterEach, describe, expect, test } from 'vitest';
import { emptyPath } from '../../../src/calc/core/path.ts';
import { showIn } from '../../../src/islands/shared/currency.ts';
import { usuallyFree } from '../../../src/islands/ways/free.ts';
import { limitsFrom, readDemands } from '../../../src/islands/ways/limits.ts';
import {
  differencesOf,
  many,
  sayAgainst,
  sayLimit,
  sayProof,
  sayWhy,
  tradeOf,
} from '../../../src/islands/ways/words.ts';

afterEach(() => showIn(undefined));

const figures = { money: 4000, moneyP80: 4600, hours: 280, hoursP80: 330, weeksP80: 12, margin: 1.68 };
const wayOf = (more: Partial<typeof figures>, answers = {}) => ({
  figures: { ...figures, ...more },
  path: { ...emptyPath('2026-12'), answers },
  changes: [],
  why: '',
});

describe('limits in words', () => {
  test('each kind says what it holds to, in the unit of the reader', () => {
    expect(sayLimit({ kind: 'money', most: 2500 }, 'metric')).toBe('money: at most $2,500');
    expect(sayLimit({ kind: 'weeks', most: 8 }, 'metric')).toBe('out of use: at most 8 weeks');
    expect(sayLimit({ kind: 'drill', diameter: 0.01, material: 'mild-steel' }, 'metric')).toBe(
      'it must drill 10 mm in mild steel under power',
    );
    expect(sayLimit({ kind: 'play', most: 0.0000254 }, 'inch')).toContain('0.001 in');
    expect(sayLimit({ kind: 'threads' }, 'metric')).toBe('it must cut threads');
  });

  test('money is said in the currency that is shown', () => {
    showIn({ code: 'EUR', perDollar: '0.5' });
    expect(sayLimit({ kind: 'money', most: 2500 }, 'metric')).toBe('money: at most €1,250');
    expect(sayAgainst({ ...figures, money: 3000 }, { money: 4000, hours: 280 })).toBe(
      '€500 less, the same hours',
    );
  });
});

describe('why a way stands beside its neighbour', () => {
  test('the cheapest needs no reason', () => {
    expect(sayWhy(wayOf({}), undefined, 1)).toBe('No way inside your limits takes less money.');
  });

  test('a search that was stopped claims no more than it looked at', () => {
    expect(sayWhy(wayOf({}), undefined, 1, false)).toMatch(
      /^Of the ways looked at, .* others may take less\.$/,
    );
  });

  test('gains and what is given up are told apart, with the answers that do it', () => {
    const cheaper = wayOf({}, { control: ['motion-card-pc'] });
    const way = wayOf({ money: 4057, hours: 247.6 }, { control: ['standalone-control'] });
    const said = sayWhy(way, cheaper, 2);
    expect(said).toContain('Against way 1 it gains 32.4 h and gives up $57.');
    expect(said).toMatch(/Control: “.+” for “.+”/);
  });

  test('a stronger way that takes more hours gives them up', () => {
    expect(tradeOf({ ...figures, money: 4100, hours: 282, margin: 1.73 }, figures)).toEqual({
      gains: ['strength and stiffness (1.73 instead of 1.68 times what it needs)'],
      gives: ['$100', '2 h'],
    });
  });

  test('answers that are the same are no difference; a question that is not asked is said so', () => {
    const some = { control: ['motion-card-pc'], cable: ['plain-wire'] };
    expect(differencesOf(some, some)).toEqual([]);
    const [only] = differencesOf({ control: ['motion-card-pc'] }, {});
    expect(only).toMatchObject({ decision: 'control', there: 'not asked' });
  });
});

test('counts are read at a glance and the proof adds up', () => {
  expect(many(2_010_624)).toBe('2,010,624');
  expect(many(26_889_180)).toBe('26.9 million');
  expect(many(5_781_293_916)).toBe('5.78 thousand million');
  const said = sayProof({
    legal: 2_010_624,
    visited: 33,
    unvisited: 2_010_591,
    nodes: 1599,
    frontier: [wayOf({})],
    cheapest: undefined,
    quickest: undefined,
    stiffest: undefined,
    relax: [],
  });
  expect(said).toContain('33 worked out one by one');
  expect(said).toContain('2,010,591 by rules, limits and bounds');
});

test('free to begin with: open ones that carry most, then answered ones, and none that moves nothing', () => {
  const of = (decision: string, status: 'open' | 'answered', money: number) => ({
    decision,
    status,
    money,
    hours: 0,
  });
  const carried = [of('a', 'answered', 900), of('b', 'open', 500), of('c', 'open', 20), of('d', 'open', 0)];
  expect(usuallyFree(carried, 2)).toEqual(['b', 'c']);
  expect(usuallyFree(carried)).toEqual(['b', 'c', 'a']);
  expect(usuallyFree([of('driven-axes', 'open', 2000), ...carried])).toEqual(['b', 'c', 'a']);
});

test('what this device remembers of the demands is taken as far as it makes sense', () => {
  expect(readDemands(undefined)).toEqual({ plain: ['checks'], material: 'mild-steel' });
  expect(readDemands('not json')).toEqual({ plain: ['checks'], material: 'mild-steel' });
  const read = readDemands(
    '{"plain":["threads","magic"],"skill":9,"drill":-1,"material":"brass","play":0.0001}',
  );
  expect(read).toEqual({ plain: ['threads'], material: 'brass', play: 0.0001 });
  expect(limitsFrom({ money: 3000 }, read)).toEqual([
    { kind: 'money', most: 3000 },
    { kind: 'play', most: 0.0001 },
    { kind: 'threads' },
  ]);
});
