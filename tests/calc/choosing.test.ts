// The entrance for screens: plain data, side by side.
import { describe, expect, test } from 'vitest';
import {
  CONVERSION,
  effectsOf,
  effectsOfQuestion,
  receiptOf,
  searchNow,
  sideBySide,
  swingsOf,
  widestOpen,
} from '../../src/calc/choosing.ts';
import { emptyPath } from '../../src/calc/core/path.ts';
import { evaluate } from '../../src/calc/evaluate.ts';
import { alternatives } from '../../src/content/alternatives.ts';
import { currentEdition as book } from '../../src/content/edition.ts';
import { pathOf } from '../../src/content/reference-paths.ts';

const path = pathOf({});

describe('side by side', () => {
  const both = sideBySide(path, book, alternatives);

  test('every alternative and the owner’s own plan have a column, once', () => {
    expect([...both.order].sort()).toEqual([CONVERSION, ...alternatives.map(({ id }) => id)].sort());
  });

  test('the own column is the report of the path', () => {
    const report = evaluate(path, book);
    expect(both.own.money.p50).toBe(report.money.p50);
    expect(both.own.weeksOut.p90).toBe(report.weeksOut.p90);
    expect(both.own.abilities.profiles.can).toBe('yes');
    expect(both.own.abilities.reversible.can).toBe('no');
  });
});

test('a synchroniser that bolts off can do what it says', () => {
  const { asPath } = sideBySide(path, book, alternatives).alternatives.find(
    ({ id }) => id === 'thread-synchroniser',
  )!;
  const { own } = sideBySide(asPath!, book, alternatives);
  expect(own.abilities).toMatchObject({
    threads: { can: 'yes' },
    profiles: { can: 'no' },
    handUse: { can: 'yes' },
    reversible: { can: 'yes' },
  });
});

test('everything is plain data: a worker can hand it over', () => {
  const wanted = { free: ['cable', 'housing'], limits: [] };
  const all = [
    effectsOf(path, book),
    effectsOfQuestion(path, book, 'control'),
    receiptOf(path, pathOf({ cable: 'moulded-leads' }), book),
    swingsOf(path, book),
    sideBySide(path, book, alternatives),
    searchNow(path, book, wanted),
  ];
  for (const each of all) expect(structuredClone(each)).toEqual(each);
});

test('an empty sheet names the six open questions that widen it most, widest first', () => {
  const open = widestOpen(emptyPath(book.edition), book);
  expect(open.length).toBe(6);
  const widths = open.map(({ money }) => money.most.by - money.least.by);
  expect(widths).toEqual([...widths].sort((a, b) => b - a));
  expect(widestOpen(path, book).every(({ status }) => status !== 'answered')).toBe(true);
});
