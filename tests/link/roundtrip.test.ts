import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { facts } from '../../src/calc/facts.ts';
import { decisions } from '../../src/calc/guide.ts';
import { decodePath } from '../../src/link/decode.ts';
import { encodePath } from '../../src/link/encode.ts';
import { priceKeys } from '../../src/link/prices.ts';
import { progressKeys } from '../../src/link/progress.ts';
import { anyPath } from '../arbitrary.ts';
import { quickly } from '../cases.ts';

describe('path links', () => {
  test('10,000 random paths come back as they went', () => {
    fc.assert(
      fc.property(anyPath, (path) => {
        const { path: back, notes, readable } = decodePath(encodePath(path));
        expect(notes).toEqual([]);
        expect(readable).toBe(true);
        expect(encodePath(back)).toBe(encodePath(path));
        expect(back.answers).toEqual(path.answers);
        for (const [id, value] of Object.entries(path.facts))
          expect(Math.abs(back.facts[id]! - value)).toBeLessThanOrEqual(1e-9 * Math.abs(value));
      }),
      { numRuns: quickly(10_000) },
    );
  }, 300_000);

  test('keys are unique over questions, figures and the words of the grammar', () => {
    const keys = [...decisions.map((d) => d.id), ...facts.map((f) => f.id), 'edition', 'size', 'have'];
    expect(new Set(keys).size).toBe(keys.length);
  });
});

/** Pieces that a hostile or damaged link may be made of. */
const piece = fc.oneof(
  fc.constantFrom(
    ...decisions.map((d) => d.id),
    ...facts.map((f) => f.id),
    'edition',
    'size',
    'have',
    ...priceKeys,
    ...progressKeys,
    '__proto__',
    'constructor',
    'toString',
  ),
  fc.constantFrom(
    ...decisions.flatMap((d) => d.options.map((o) => o.id)),
    'not-sure',
    '2026-11',
    'NaN',
    'Infinity',
    '1e999',
    '-0',
    '%',
    '%zz',
    '%00',
  ),
  fc.constantFrom(
    ...['dial-indicator:quoted', 'ordered', '12.50', 'pack', 'EUR', 'x4', 'x1e999', 'on20270103', 'on2027'],
    ...['shop-a', '!shop-zz', 'carriage-8', 'free-from-', 'duty-0.05', 'duty-2', 'EUR:0.92', 'EUR:0', '0.15'],
    ...['pieces-30', 'hand-set-up-0.4', 'attended-1e-7', 'shaped', '__proto__:quoted'],
  ),
  fc.string({ maxLength: 12 }),
  fc.string({ unit: 'binary', maxLength: 6 }),
  fc.constantFrom('=', '&', '?', '#', ',', ':', '/', ';', '1?', '2?'),
);
const hostile = fc.array(piece, { maxLength: 14 }).map((pieces) => pieces.join(''));
const nearlyRight = fc
  .tuple(fc.array(fc.tuple(piece, piece), { maxLength: 8 }))
  .map(([pairs]) => `1?${pairs.map(([k, v]) => `${k}=${v}`).join('&')}`);

test('100,000 random and hostile fragments: nothing thrown, no answer invented', () => {
  fc.assert(
    fc.property(fc.oneof(hostile, nearlyRight), (fragment) => {
      const { path, notes, readable } = decodePath(fragment);
      for (const [id, answer] of Object.entries(path.answers)) {
        expect(fragment).toContain(id);
        for (const option of answer) expect(decodeURIComponentSafe(fragment)).toContain(option);
      }
      for (const value of Object.values(path.facts)) expect(Number.isFinite(value)).toBe(true);
      if (!readable) expect(notes.length).toBeGreaterThan(0);
    }),
    { numRuns: quickly(100_000) },
  );
}, 300_000);

function decodeURIComponentSafe(text: string): string {
  return text.replace(/%[0-9a-f]{2}/gi, (escaped) => {
    try {
      return decodeURIComponent(escaped);
    } catch {
      return escaped;
    }
  });
}

test.each([
  ['', 0, true],
  ['#', 0, true],
  ['hello', 1, false],
  ['9?control=motion-card-pc', 1, false],
  ['1?', 0, true],
  ['1?control=something-new', 1, true],
  ['1?no-such-question=yes', 1, true],
  ['1?swing=wide', 1, true],
  ['1?edition=1999-01', 1, true],
  ['1?control=motion-card-pc&control=small-board', 1, true],
  ['1?size=gigantic&have=dial-indicator,moon', 2, true],
])('%s gives %d notes', (fragment, count, readable) => {
  const decoded = decodePath(fragment);
  expect(decoded.notes).toHaveLength(count);
  expect(decoded.readable).toBe(readable);
});
