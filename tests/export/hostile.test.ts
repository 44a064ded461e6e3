import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import { readQuotes } from '../../src/export/read-csv.ts';
import { readPathFile } from '../../src/export/read-json.ts';
import { readShelfFile } from '../../src/export/read-shelf.ts';

/** The entries of a corpus: what it is, and the text. */
function corpus(name: string): [string, string][] {
  const text = readFileSync(new URL(`../data/${name}`, import.meta.url), 'utf8');
  const lines = text.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
  return Array.from({ length: lines.length / 2 }, (_, at) => [
    lines[2 * at]!,
    JSON.parse(lines[2 * at + 1]!),
  ]);
}

const born = Object.getOwnPropertyNames(Object.prototype);
afterEach(() => expect(Object.getOwnPropertyNames(Object.prototype)).toEqual(born));

describe('a hostile list of quotes', () => {
  const generated: [string, string][] = [
    ['one cell of 100,000 letters', `item,price\n${'x'.repeat(100_000)},5.00\n`],
    ['1,000 columns', `${'item,price,'.repeat(500)}\n${'x,'.repeat(1000)}\n`],
    ['a cell of a million quotation marks', `item,price\n"${'""'.repeat(500_000)}",5.00\n`],
  ];
  test.each([...corpus('hostile-csv.txt'), ...generated])(
    '%s: nothing is taken, and it is said',
    (_, text) => {
      const { matched, unmatched, notes } = readQuotes(text, { wanted: ['bracket-stock'], currency: 'USD' });
      expect(matched).toEqual([]);
      expect(unmatched.length + notes.length).toBeGreaterThan(0);
      for (const { reason, text: shown } of unmatched) {
        expect(reason).not.toBe('');
        expect(shown.length).toBeLessThan(140);
      }
    },
  );
});

describe('a hostile file of a path', () => {
  const purchases = Array.from({ length: 10_000 }, (_, at) => `"p${at}":{"state":"need"}`).join();
  const path = (inside: string) => `{"format":"halfnut-path","version":1,"path":{${inside}}}`;
  const generated: [string, string][] = [
    ['a seller’s name of 10,000 letters', path(`"sellers":{"${'x'.repeat(10_000)}":{}}`)],
    ['10,000 purchases', path(`"purchases":{${purchases}}`)],
    ['lists in each other', path(`"facts":{"swing":${'['.repeat(50_000)}${']'.repeat(50_000)}}`)],
  ];
  test.each([...corpus('hostile-json.txt'), ...generated])(
    '%s: it is said, and nothing of it is kept',
    (_, text) => {
      const { path: read, notes } = readPathFile(text);
      expect(notes.length).toBeGreaterThan(0);
      for (const { say } of notes) expect(say.length).toBeLessThan(300);
      const { edition: _edition, size, ...others } = read;
      expect(others).toEqual({ facts: {}, answers: {}, owned: [] });
      expect(size).toBe('medium');
    },
  );
});

describe('a hostile file of a shelf', () => {
  const shelf = (paths: string) => `{"format":"halfnut-shelf","version":1,"paths":${paths}}`;
  const generated: [string, string][] = [
    ['paths in each other', shelf(`${'['.repeat(50_000)}${']'.repeat(50_000)}`)],
    ['a name of 100,000 letters in place of a path', shelf(`["${'x'.repeat(100_000)}"]`)],
  ];
  test.each([...corpus('hostile-shelf-json.txt'), ...generated])(
    '%s: it is said, and no path comes of it',
    (_, text) => {
      const { entries, damaged, notes } = readShelfFile(text);
      expect(entries).toEqual([]);
      expect(damaged.length + notes.length).toBeGreaterThan(0);
      for (const { say } of [...damaged, ...notes]) expect(say.length).toBeLessThan(300);
    },
  );
  test.each(corpus('hostile-json.txt'))('as the file of its path, %s: it is said', (_, text) => {
    const { entries, damaged, notes } = readShelfFile(shelf(`[{"id":"a","file":${jsonOr(text)}}]`));
    const said = [...damaged, ...notes, ...entries.flatMap((entry) => entry.notes)];
    expect(said.length).toBeGreaterThan(0);
  });
});

/** The text where it is JSON, else the text in quotation marks. */
function jsonOr(text: string): string {
  try {
    JSON.parse(text);
    return text;
  } catch {
    return JSON.stringify(text);
  }
}
