import { expect, test } from 'vitest';
import type { PriceBook } from '../../../src/calc/core/price-book.ts';
import { editionsDifference } from '../../../src/calc/cost/editions-difference.ts';
import { editionByName, editions } from '../../../src/content/edition.ts';

const first = editionByName('2026-11')!;
const second = editionByName('2026-12')!;

test('an edition does not differ from itself', () => {
  for (const book of editions) {
    const { added, removed, moved, landed, carriage, same, packsChanged } = editionsDifference(book, book);
    expect([added, removed, moved, landed, carriage]).toEqual([[], [], [], [], []]);
    expect(same).toBe(Object.keys(book.parts).length);
    expect(packsChanged).toBe(false);
  }
});

test('the second edition adds spares, moves the lot they came out of, and prices whole packs', () => {
  const found = editionsDifference(first, second);
  expect(found.added.map(({ part }) => part).sort()).toEqual([
    'small-taps',
    'spare-belt',
    'spare-coupling-element',
    'spare-fuses',
    'tapping-drills',
  ]);
  expect(found.removed).toEqual([]);
  expect(found.moved.map(({ part, changed }) => [part, changed])).toEqual([['drills-and-taps', ['price']]]);
  expect(found.carriage.map(({ ship }) => ship)).toEqual(['none', 'letter', 'parcel', 'heavy', 'freight']);
  expect(found.packsChanged).toBe(true);
});

test('backwards, what was added is taken out', () => {
  const there = editionsDifference(first, second);
  const back = editionsDifference(second, first);
  expect(back.removed.map(({ part }) => part)).toEqual(there.added.map(({ part }) => part));
  expect(back.same).toBe(there.same);
});

test('a moved band, pack or landed share is named', () => {
  const entry = first.parts['power-cable']!;
  const other: PriceBook = {
    ...first,
    landed: { ...first.landed, elsewhere: [0.1, 0.3, 0.5] },
    parts: { ...first.parts, 'power-cable': { ...entry, pack: 7, price: [1, 2, 3] } },
  };
  const { moved, landed } = editionsDifference(first, other);
  expect(moved.map(({ part, changed }) => [part, changed])).toEqual([['power-cable', ['price', 'pack']]]);
  expect(landed).toEqual([{ country: 'elsewhere', before: first.landed.elsewhere, after: [0.1, 0.3, 0.5] }]);
});
