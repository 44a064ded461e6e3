import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limits } from '../../src/export/limits.ts';
import { publishedShelfSchema } from '../../src/export/published-schema.ts';
import { readShelfFile } from '../../src/export/read-shelf.ts';
import { type ShelfEntry, shelfFile } from '../../src/export/shelf.ts';
import { shelfShape } from '../../src/export/shelf-schema.ts';
import { anyPath } from '../arbitrary.ts';
import { anyOwn } from './own.ts';

const some = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const words = (maxLength: number) =>
  fc
    .string({ unit: 'grapheme', minLength: 1, maxLength })
    // biome-ignore lint/suspicious/noControlCharactersInRegex: what no owner types
    .map((text) => text.replace(/[\u0000-\u001F\u007F]/g, ' '))
    .filter((text) => text.isWellFormed());
const id = fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,20}$/);
const moment = fc
  .date({ min: new Date('2026-01-01'), max: new Date('2030-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString());
const anEntry: fc.Arbitrary<ShelfEntry> = fc.record({
  id,
  path: fc.tuple(anyPath, anyOwn).map(([path, own]) => ({ ...path, ...own })),
  name: some(words(40)),
  note: some(words(200)),
  made: some(moment),
  changed: some(moment),
  from: some(fc.record({ id, name: words(40) })),
});
const aShelf = fc.record({
  entries: fc.array(anEntry, { maxLength: 6 }),
  unread: fc.array(fc.record({ id, text: fc.string({ unit: 'binary' }) }), { maxLength: 2 }),
});

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

test('500 random shelves come back as they went', () => {
  fc.assert(
    fc.property(aShelf, ({ entries, unread }) => {
      const text = shelfFile(entries, { saved: '2026-12-01', unread });
      expect(shelfShape.safeParse(JSON.parse(text)).error).toBeUndefined();
      const read = readShelfFile(text);
      expect([read.notes, read.damaged, read.saved]).toEqual([[], [], '2026-12-01']);
      expect(read.unread).toEqual(unread);
      expect(read.entries.flatMap(({ notes }) => notes)).toEqual([]);
      expect(plain(read.entries.map(({ notes: _, ...entry }) => entry))).toEqual(plain(entries));
    }),
    { numRuns: 500 },
  );
}, 300_000);

test('the published schema is the one that reading checks against', () => {
  const published = readFileSync(new URL('../../public/schema/shelf-1.json', import.meta.url), 'utf8');
  expect(published).toBe(publishedShelfSchema());
});

const sound = fc.sample(anEntry, { numRuns: 3, seed: 7 });

describe('a damaged file of paths', () => {
  const file = () => JSON.parse(shelfFile(sound)) as { paths: unknown[] };
  const twisted = (twist: (paths: unknown[]) => unknown[]) =>
    readShelfFile(JSON.stringify({ ...file(), paths: twist(file().paths) }));

  test('names the damaged path and reads the others', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.nat(2), (junk, at) => {
        const read = twisted((paths) => paths.map((path, each) => (each === at ? junk : path)));
        expect(read.entries.map(({ id }) => id)).toEqual(sound.flatMap(({ id }, n) => (n === at ? [] : id)));
        expect(read.damaged).toHaveLength(1);
        expect(read.damaged[0]!.say).toContain(`Path ${at + 1} of the file`);
        expect(read.damaged[0]!.say.length).toBeLessThan(300);
      }),
      { numRuns: 300 },
    );
  });

  test('keeps a path whose day or origin is damaged, and says it', () => {
    const [entry] = twisted(([first]) => [
      { ...(first as object), made: 'yesterday', from: 3, id: '../x' },
    ]).entries;
    expect(entry).toMatchObject({ id: undefined, made: undefined, from: undefined });
    expect(entry!.notes).toHaveLength(3);
    expect(plain(entry!.path)).toEqual(plain(sound[0]!.path));
  });

  test('with more paths than fit reads those that do, and says so', () => {
    const empty = { id: 'a', file: { format: 'halfnut-path', version: 1, path: {} } };
    const read = twisted(() => Array.from({ length: limits.paths + 1 }, () => empty));
    expect(read.entries).toHaveLength(limits.paths);
    expect(read.notes[0]!.say).toMatch(/1001 paths/);
  });

  test('a file of a single path is read too', () => {
    const single = JSON.stringify((file().paths[0] as { file: unknown }).file);
    expect(plain(readShelfFile(single).entries[0]!.path)).toEqual(plain(sound[0]!.path));
  });

  test('cut anywhere, or with any letter changed, never throws and says what it came to', () => {
    const text = shelfFile(sound);
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.string({ unit: 'binary', maxLength: 3 }), (at, letters) => {
        for (const hostile of [text.slice(0, at), text.slice(0, at) + letters + text.slice(at + 1)]) {
          const { entries, damaged, notes } = readShelfFile(hostile);
          expect(entries.length + damaged.length + notes.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 300 },
    );
  });
});
