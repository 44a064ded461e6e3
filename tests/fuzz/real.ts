// Whole texts of ours: links, files, lists of quotes and what a device keeps.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import type { Path } from '../../src/calc/core/path.ts';
import { parts } from '../../src/calc/trade.ts';
import { pathFile } from '../../src/export/json.ts';
import { shelfFile } from '../../src/export/shelf.ts';
import { ownText } from '../../src/islands/kept-lines.ts';
import { written } from '../../src/islands/shelf/record.ts';
import { encodeComparison } from '../../src/link/comparison.ts';
import { encodePath } from '../../src/link/encode.ts';
import { anyPath } from '../arbitrary.ts';
import { anyOwn } from '../export/own.ts';

const kept = readFileSync(new URL('../links/v1.txt', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('1?'));

export const wholePath: fc.Arbitrary<Path> = fc
  .tuple(anyPath, anyOwn)
  .map(([path, own]) => ({ ...path, ...own }));

const ALL = { prices: true, progress: true };

export const links: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(...kept),
  wholePath.map((path) => encodePath(path, ALL)),
  fc.tuple(wholePath, fc.array(wholePath, { maxLength: 4 })).map(([first, others]) =>
    encodeComparison(
      first,
      others.map((path) => ({ kind: 'path', path })),
      ALL,
    ),
  ),
);

export const pathFiles: fc.Arbitrary<string> = wholePath.map((path) =>
  pathFile(path, { name: 'a', note: 'b' }),
);

export const shelfFiles: fc.Arbitrary<string> = fc
  .array(wholePath, { minLength: 1, maxLength: 3 })
  .map((paths) =>
    shelfFile(
      paths.map((path, at) => ({ id: `a${at}`, path, name: `Path ${at}` })),
      { saved: '2027-01-01', unread: [{ id: 'z', text: 'torn' }] },
    ),
  );

export const keptOwn: fc.Arbitrary<string> = anyOwn.map(ownText);

export const keptRecords: fc.Arbitrary<string> = anyPath.map((path) =>
  written({ name: 'a', made: '2027-01-01T00:00:00.000Z', fragment: encodePath(path), rev: 'r1' }),
);

const cell = fc.oneof(
  fc.constantFrom(...parts.slice(0, 60).flatMap(({ id, name }) => [id, name])),
  fc.constantFrom('12.50', '1.234,50', '3', 'EUR', 'quoted', 'ordered', '2027-01-03', '3/4/2027', 'pack', ''),
  fc.string({ maxLength: 12 }),
);
const heads = ['item id', 'item', 'price', 'qty', 'currency', 'state', 'seller', 'date', 'total', 'note'];

export const quoteLists: fc.Arbitrary<string> = fc
  .tuple(
    fc.subarray(heads, { minLength: 2 }),
    fc.constantFrom(',', ';', '\t'),
    fc.array(fc.array(cell, { minLength: 1, maxLength: 10 }), { maxLength: 12 }),
    fc.constantFrom('\n', '\r\n', '\r'),
  )
  .map(([head, mark, rows, end]) => [head, ...rows].map((row) => row.join(mark)).join(end));
