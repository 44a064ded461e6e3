import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { withList } from '../../src/offline/integration.ts';
import { addressOf, hashOf, isKept, listOf } from '../../src/offline/list.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

test.each([
  'index.html',
  'plan/index.html',
  'book/find.json',
  '_astro/Bench.0HpbvuHH.js',
  'favicon.svg',
  'licences.txt',
  'schema/path-1.json',
])('%s is kept on a device', (file) => {
  expect(isKept(file)).toBe(true);
});

test.each([
  'pictures/plan.png',
  'robots.txt',
  'sitemap.xml',
  '404.html',
  'at-hand.js',
  'at-hand.json',
  '_headers',
  '.htaccess',
  'book/.nojekyll',
])('%s is not', (file) => {
  expect(isKept(file)).toBe(false);
});

test.each([
  ['index.html', ''],
  ['plan/index.html', 'plan/'],
  ['book/find.json', 'book/find.json'],
  ['half nut/index.html', 'half%20nut/'],
  ['odd-index.html', 'odd-index.html'],
])('%s is asked for as "%s"', (file, address) => {
  expect(addressOf(file)).toBe(address);
});

test('a list is the same in whatever order the files were read, and says how much it is', () => {
  const built = [
    { file: 'plan/index.html', content: bytes('plan') },
    { file: 'index.html', content: bytes('first page') },
    { file: 'pictures/x.png', content: bytes('a large picture') },
  ];
  const list = listOf(built);
  expect(JSON.stringify(listOf(built.toReversed()))).toBe(JSON.stringify(list));
  expect(list).toEqual({
    bytes: 14,
    files: { '': hashOf(bytes('first page')), 'plan/': hashOf(bytes('plan')) },
  });
});

test('a hash is the beginning of the SHA-256, as the worker works it out again', () => {
  const whole = createHash('sha256').update('abc').digest('hex');
  // NIST, FIPS 180-4 examples: SHA-256 of "abc".
  expect(whole.startsWith('ba7816bf8f01cfea')).toBe(true);
  expect(hashOf(bytes('abc'))).toBe('ba7816bf8f01cfea');
});

test('the worker stands alone, its list in front', () => {
  expect(withList('self.x()', '{"bytes":1}')).toBe('const KEPT = {"bytes":1};\nself.x()');
  expect(withList('const to="an import of x";', '{}')).toContain('import of');
});

test.each(['import{a}from"./b.js";x()', 'x();export{a};', "x()\nimport './b.js'", 'y}export*from"./c.js"'])(
  'a build whose worker says %s ends',
  (worker) => {
    expect(() => withList(worker, '{}')).toThrow('only as one file');
  },
);
