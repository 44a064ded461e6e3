import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  gathering,
  licencesText,
  notAllowed,
  packageOf,
  readPackage,
  type Shipped,
} from '../../src/found/licences.ts';

const root = join(import.meta.dirname, '../..');
const made = (name: string, licence = 'MIT'): Shipped => ({
  name,
  version: '1.2.3',
  licence,
  texts: [`Rights of ${name}`],
});

test.each([
  ['/home/a/node_modules/preact/dist/preact.mjs', 'preact'],
  ['/home/a/node_modules/@nanostores/preact/index.js?v=1', '@nanostores/preact'],
  ['C:\\a\\node_modules\\zod\\mini\\index.js', 'zod'],
  ['/a/node_modules/one/node_modules/two/index.js', 'two'],
  ['\0vite/preload-helper.js', 'vite'],
  ['\0rolldown/runtime.js', 'rolldown'],
  ['/home/a/src/calc/evaluate.ts', undefined],
  ['\0worked-out', undefined],
])('%s is of %s', (id, name) => {
  expect(packageOf(id)).toBe(name);
});

test('what goes to the browser is gathered, and nothing of what stays behind', () => {
  const found = new Set<string>();
  const bundle = {
    'a.js': {
      modules: {
        '/a/node_modules/preact/x.js': { renderedLength: 9 },
        '/a/node_modules/left-out/x.js': { renderedLength: 0 },
        '/a/src/x.ts': { renderedLength: 9 },
      },
    },
    'a.css': {},
  };
  gathering(found).generateBundle.call({ environment: { name: 'ssr' } }, {}, bundle);
  expect([...found]).toEqual([]);
  gathering(found).generateBundle.call({ environment: { name: 'client' } }, {}, bundle);
  expect([...found]).toEqual(['preact']);
});

describe('the licence of an installed package', () => {
  test('is read with the words that it asks to be said', () => {
    const { licence, texts } = readPackage('preact', root);
    expect(licence).toBe('MIT');
    expect(texts[0]).toMatch(/The above copyright notice and this permission notice shall be included/);
  });

  test('of a tool leaves out those of what is packed into the tool', () => {
    const [text = ''] = readPackage('vite', root).texts;
    expect(text).toMatch(/Permission is hereby granted/);
    expect(text.length).toBeLessThan(3000);
  });

  test('ends the build where it is not written out, and where it asks for more', () => {
    expect(() => readPackage('flesch-kincaid/none', root)).toThrow();
    const odd = [
      made('a', 'GPL-3.0-only'),
      made('b', 'UNLICENSED'),
      made('c', 'undefined'),
      made('d', 'ISC'),
    ];
    expect(notAllowed(odd).map(({ name }) => name)).toEqual(['a', 'b', 'c']);
  });
});

test('the list names each package once, in order, with its words', () => {
  const text = licencesText('Our own words', [made('zebra'), made('@a/long-name', 'ISC')]);
  expect(text).toContain('  @a/long-name 1.2.3  ISC\n  zebra 1.2.3         MIT\n');
  expect(text).toMatch(
    /Our own words\n\n-+\n\n@a\/long-name 1\.2\.3\n\nRights of @a\/long-name\n\n-+\n\nzebra/,
  );
  expect(text.endsWith('Rights of zebra\n')).toBe(true);
});
