import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const folder = new URL('../../src/content/prices/', import.meta.url);

/** SHA-256 of every released edition of prices. A line is added with an edition and never changed. */
const released: Readonly<Record<string, string>> = {
  '2026-11.json': '7b133a9b0eeaeb1ae11002c60298886d80239c1287483c0348a31783dcfee97f',
  '2026-12.json': 'c96dd1e1d1b58aa8433e70c155a4372b1fdf306536db381f1b0c8ee88d30e528',
};

test('a released edition of prices is never edited', () => {
  const found = readdirSync(folder).map((name) => [
    name,
    createHash('sha256')
      .update(readFileSync(new URL(name, folder)))
      .digest('hex'),
  ]);
  expect(Object.fromEntries(found)).toEqual(released);
});
