import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { emptyPath, type Path } from '../../src/calc/core/path.ts';
import type { Purchase, Seller } from '../../src/calc/core/purchase.ts';
import { pathFile } from '../../src/export/json.ts';
import { fileShape } from '../../src/export/path-schema.ts';
import { publishedSchema } from '../../src/export/published-schema.ts';
import { readPathFile } from '../../src/export/read-json.ts';
import { currentName } from '../../src/link/known.ts';
import { anyPath } from '../arbitrary.ts';
import { anyOwn } from './own.ts';

const aPath = fc.tuple(anyPath, anyOwn).map(([path, own]) => ({ ...path, ...own }));

test('1,000 random paths with everything an owner may type come back as they went', () => {
  fc.assert(
    fc.property(aPath, (path) => {
      const text = pathFile(path, { name: 'Bench lathe', note: 'Second try', saved: '2026-11-27' });
      expect(fileShape.safeParse(JSON.parse(text)).success).toBe(true);
      const { path: back, notes, readable, ...about } = readPathFile(text);
      expect(notes).toEqual([]);
      expect(readable).toBe(true);
      expect(about).toEqual({ name: 'Bench lathe', note: 'Second try', saved: '2026-11-27' });
      expect(JSON.parse(JSON.stringify(back))).toEqual(JSON.parse(JSON.stringify(path)));
    }),
    { numRuns: 1000 },
  );
}, 300_000);

test('every field that an owner can fill is saved and read back', () => {
  const purchase: Required<Purchase> = {
    state: 'ordered',
    price: '12.50',
    per: 'pack',
    currency: 'EUR',
    qty: 3,
    date: '2026-11-27',
    seller: 'Corner shop',
    note: 'the blue one',
  };
  const seller: Required<Seller> = {
    freight: '5.00',
    freeFrom: '100',
    currency: 'EUR',
    abroad: true,
    dutyRate: 0.05,
    carriageTaxed: true,
    taxIncluded: false,
  };
  const whole: Required<Path> = {
    edition: currentName,
    size: 'small',
    facts: { swing: 0.2 },
    answers: { control: [] },
    owned: ['trial-stock'],
    purchases: { 'alignment-bar': purchase },
    sellers: { 'Corner shop': seller },
    currency: { code: 'EUR', perDollar: '0.92' },
    chances: { 'hidden-wear': 0.25 },
    allowance: 0.1,
    start: '2027-02-01',
    progress: {
      done: { 'write-job-list': '2027-01-04' },
      values: { 'carriage-play': [0.00001] },
      spent: { 'write-job-list': 1.5 },
      notes: { 'write-job-list': 'twenty parts' },
      shelf: { riser: ['drawing', 'made'] },
    },
    families: [
      {
        name: 'Knobs',
        piecesPerBatch: 30,
        batchesPerYear: 12,
        byHand: { setUp: 0.5, piece: 0.2 },
        byProgram: { firstSetUp: 2, setUp: 0.4, attended: 0.06 },
        shape: 'plain',
        outsidePrice: 9,
      },
    ],
  };
  expect(readPathFile(pathFile(whole))).toMatchObject({ path: whole, notes: [] });
});

test('the published schema is the one that reading checks against', () => {
  const published = readFileSync(new URL('../../public/schema/path-1.json', import.meta.url), 'utf8');
  expect(published).toBe(publishedSchema());
});

/** A file with one thing changed. */
function file(change: Record<string, unknown> = {}, top: Record<string, unknown> = {}): string {
  const path = { ...emptyPath(currentName), ...change };
  return JSON.stringify({ format: 'halfnut-path', version: 1, path, ...top });
}

const says = (text: string) => readPathFile(text).notes.map(({ say }) => say);

describe('what a file of a path cannot hold', () => {
  it.each([
    ['not JSON', '{', /not JSON/],
    ['an empty file', '', /not JSON/],
    ['a list', '[]', /“format” is not/],
    ['nothing', 'null', /“format” is not/],
    ['another format', '{"format":"something"}', /“format” is not/],
    ['no path', '{"format":"halfnut-path","version":1}', /“path” is missing/],
    ['a path that is a list', '{"format":"halfnut-path","version":1,"path":[]}', /“path” is missing/],
    ['a later version', file({}, { version: 2 }), /version “2”/],
    ['a version in words', file({}, { version: 'one' }), /version “one”/],
    ['100,000 lists in each other', `${'['.repeat(100_000)}${']'.repeat(100_000)}`, /does not hold a path/],
    ['10 MB', `"${'x'.repeat(10_000_000)}"`, /10\.0 MB/],
  ])('%s is refused with a message and an empty path', (_, text, message) => {
    const { path, notes, readable } = readPathFile(text);
    expect(readable).toBe(false);
    expect(path).toEqual(emptyPath(currentName));
    expect(notes).toHaveLength(1);
    expect(notes[0]!.say).toMatch(message);
  });

  const one = (purchase: unknown) => ({ purchases: { 'alignment-bar': purchase } });
  it.each<[string, Record<string, unknown>, RegExp]>([
    ['an unknown edition', { edition: '1999-01' }, /edition “1999-01”/],
    ['an unknown size', { size: 'huge' }, /“huge” is not known/],
    ['an unknown figure', { facts: { wingspan: 1 } }, /“wingspan” is not known/],
    ['a figure in words', { facts: { swing: 'twelve inches' } }, /“twelve inches” is not a number/],
    ['a figure that is null', { facts: { swing: null } }, /“null” is not a number/],
    ['facts as a list', { facts: [] }, /“facts” should be a group/],
    ['an unknown question', { answers: { horoscope: ['lion'] } }, /“horoscope” is not known/],
    ['an unknown answer', { answers: { control: ['clay-tablet'] } }, /“clay-tablet” is not known/],
    ['an answer that is a text', { answers: { control: 'clay' } }, /is not a list of answers/],
    ['an answer inside a group', { answers: { control: [{ a: 1 }] } }, /a group of values is not known/],
    ['an unknown part owned', { owned: ['unicorn'] }, /“unicorn” is not known/],
    ['owned as a text', { owned: 'alignment-bar' }, /“owned” should be a list/],
    ['a purchase of an unknown part', { purchases: { unicorn: { state: 'need' } } }, /“unicorn”/],
    ['an unknown state', one({ state: 'stolen' }), /“stolen” cannot be read as “state”/],
    ['no state', one({}), /“state” is missing/],
    ['a price in words', one({ state: 'quoted', price: 'twelve' }), /“twelve” cannot be read as “price”/],
    ['a negative price', one({ state: 'quoted', price: '-1.00' }), /“-1.00”/],
    ['a price of NaN', one({ state: 'quoted', price: 'NaN' }), /“NaN”/],
    ['a huge exponent', one({ state: 'quoted', price: '1e999' }), /“1e999”/],
    ['a price as a number', one({ state: 'quoted', price: 12.5 }), /“12.5” cannot be read as “price”/],
    ['a quantity of nothing', one({ state: 'quoted', qty: 0 }), /“0” cannot be read as “qty”/],
    ['a day that is none', one({ state: 'quoted', date: '2026-02-30' }), /“2026-02-30”/],
    ['a note with a NUL', one({ state: 'quoted', note: 'a\u0000b' }), /as “note”/],
    ['a note of 1,001 letters', one({ state: 'quoted', note: 'x'.repeat(1001) }), /as “note”/],
    ['a field that is none', one({ state: 'quoted', colour: 'red' }), /“colour” is not a field/],
    ['a purchase that is a list', one([]), /a list cannot be read/],
    ['a seller called like an object', { sellers: { constructor: {} } }, /cannot be the name of a shop/],
    ['a purchase from such a seller', one({ state: 'quoted', seller: 'toString' }), /“toString”/],
    ['a currency without a rate', { currency: { code: 'EUR' } }, /“perDollar” is missing/],
    ['a rate of zero', { currency: { code: 'EUR', perDollar: '0' } }, /“0” cannot be read as “perDollar”/],
    [
      'a chance above one',
      { chances: { 'hidden-wear': 2 } },
      /“hidden-wear” \(a chance\): “2” cannot be read/,
    ],
    ['an unknown risk', { chances: { dragon: 0.5 } }, /“dragon” \(a chance\)/],
    ['an allowance in words', { allowance: 'ten' }, /“ten” is not a share/],
    ['a start that is no day', { start: 'soon' }, /“soon” is not a day/],
    ['a field of the path that is none', { password: 'x' }, /“password” is not a field/],
  ])('%s is listed, and the rest is read', (_, change, message) => {
    const { path, notes, readable } = readPathFile(file({ facts: { swing: 0.2 }, ...change }));
    expect(readable).toBe(true);
    expect(notes).toHaveLength(1);
    expect(notes[0]!.say).toMatch(message);
    if (!('facts' in change)) expect(path.facts).toEqual({ swing: 0.2 });
  });

  test.each(['facts', 'answers', 'purchases', 'sellers', 'chances'])(
    'prototype keys in %s reach nothing',
    (field) => {
      const group = '{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}';
      const text = file()
        .replace('"path":{', `"path":{"${field}":${group},`)
        .replaceAll(`"${field}":{}`, '"size":"small"');
      expect(says(text).length).toBeGreaterThanOrEqual(2);
      expect(({} as Record<string, unknown>).polluted).toBeUndefined();
      expect(JSON.stringify(readPathFile(text).path)).not.toContain('polluted');
    },
  );

  test('too many purchases: the first 500 are looked at, and it is said', () => {
    const purchases = Object.fromEntries(
      Array.from({ length: 501 }, (_, at) => [`part-${at}`, { state: 'need' }]),
    );
    expect(says(file({ purchases }))[0]).toMatch(/501 entries; the first 500/);
  });

  test('random text and random JSON always come to a message or a path, and never throw', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json({ maxDepth: 4 })), (text) => {
        expect(readPathFile(text).notes.length).toBeGreaterThan(0);
        expect(
          readPathFile(`{"format":"halfnut-path","version":1,"path":{"facts":${text}}}`).path.facts,
        ).toEqual({});
      }),
      { numRuns: 2000 },
    );
  });
});
