// A built site is walked link by link: pages, files, places on them, and what a script draws later.
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readBuilt } from '../../src/found/built-page.ts';
import { drawnSections } from '../../src/found/drawn-late.ts';
import { deadLinks, deadLinksSaid } from '../../src/found/links.ts';
import { oneWayWords } from '../../src/found/word-links.ts';

const files = ['icon.svg', '_astro/a.css'];
const deadOn = (pages: Record<string, string>, base = '/') => {
  const built = Object.entries(pages).map(([page, html]) => readBuilt(page, html));
  return deadLinks(built, { base, hasFile: (path) => files.includes(path) }).map(
    ({ page, link }) => `${page}: ${link}`,
  );
};
const to = (link: string) => `<p><a class="x" href="${link}">there</a></p>`;
const island = '<astro-island uid="a"></astro-island>';

describe('links that lead somewhere', () => {
  test.each([
    ['a page', '/b/'],
    ['a page with a question', '/b/?at=x'],
    ['a place on a page', '/b/#here'],
    ['a place with an ampersand', '/b/#q&#38;a'],
    ['a place on the same page', '#main'],
    ['the first page', '/'],
    ['a page with an owner’s path', '/b/#2?s=light&amp;a=1'],
    ['a file', '/icon.svg'],
    ['another place on the web', 'https://example.org/x/#y'],
    ['mail', 'mailto:a@example.org'],
    ['what the plan draws later', '/plan/#checks'],
    ['a task that the plan draws later', '/plan/#task-monthly-stop-test'],
  ])('%s', (_, link) => {
    const pages = {
      '': '<p id="main">',
      'a/': `<main id="main">${to(link)}`,
      'b/': '<h2 title="a > b" id="here">x</h2><i id="q&amp;a">',
      'plan/': island,
    };
    expect(deadOn(pages)).toEqual([]);
  });
});

describe('links that lead nowhere', () => {
  test.each([
    ['no such page', '/c/'],
    ['a page without its last stroke', '/b'],
    ['no such place', '/b/#there'],
    ['no such place on the same page', '#there'],
    ['no such file', '/icon.png'],
    ['a place in a file', '/icon.svg#x'],
    ['a task that is none', '/plan/#task-none'],
    ['a task on a page with some other script', '/d/#task-monthly-stop-test'],
    ['a part that no script draws there', '/b/#checks'],
    ['an address that depends on where the page stands', 'b/'],
  ])('%s', (_, link) => {
    expect(deadOn({ 'a/': to(link), 'b/': '<h2 id="here">', 'plan/': island, 'd/': island })).toEqual([
      `a/: ${link}`,
    ]);
  });

  test('a page that is written without a script draws nothing later', () => {
    expect(deadOn({ 'plan/': to('/plan/#checks') })).toEqual(['plan/: /plan/#checks']);
  });

  test('style sheets and pictures are looked for, too', () => {
    const html = '<link rel="stylesheet" href="/_astro/a.css"><link href="/_astro/b.css"><img src="/c.png">';
    expect(deadOn({ '': html })).toEqual([': /_astro/b.css', ': /c.png']);
  });

  test('a site in a folder is walked from there', () => {
    const pages = { 'a/': to('/shop/b/') + to('/b/') + to('/shop/'), 'b/': '', '': '' };
    expect(deadOn(pages, '/shop/')).toEqual(['a/: /b/']);
  });
});

test('the message names the first fifty and counts the rest', () => {
  const dead = Array.from({ length: 52 }, (_, at) => ({ page: at ? 'a/' : '', link: `/${at}/` }));
  const lines = deadLinksSaid(dead).split('\n');
  expect(lines.slice(0, 2)).toEqual(['Links that lead nowhere: 52', '  the first page → /0/']);
  expect(lines).toHaveLength(52);
  expect(lines.at(-1)).toBe('  and 2 more');
});

test('what is said to be drawn later is drawn by an island', () => {
  const src = join(import.meta.dirname, '../../src/islands');
  const drawn = globSync('**/*.tsx', { cwd: src })
    .map((file) => readFileSync(join(src, file), 'utf8'))
    .join('\n');
  const missing = Object.values(drawnSections)
    .flat()
    .filter((id) => !drawn.includes(`id="${id}"`));
  expect(missing).toEqual([]);
});

describe('words of the trade, there and back', () => {
  const word = (id: string) => `<p><a class="gloss" href="/shop/words/#word-${id}" data-keep-path>x</a></p>`;
  const entry = (id: string, ...places: string[]) =>
    `<div id="word-${id}">${places.map((place) => `<a href="/shop/${place}">x</a>`).join('')}</div>`;
  const oneWay = (pages: Record<string, string>) =>
    oneWayWords(
      Object.entries(pages).map(([page, html]) => readBuilt(page, html)),
      '/shop/',
    ).map(({ page, link }) => `${page}: ${link}`);

  test('a word that leads back to each page that links to it is in order', () => {
    const words = `${entry('gib', 'a/', 'b/')}${entry('bed')}</dl><footer><a href="/shop/a/">x</a></footer>`;
    expect(oneWay({ 'a/': word('gib'), 'b/': word('gib'), 'words/': words })).toEqual([]);
  });

  test('a word that does not lead back is told', () => {
    expect(
      oneWay({ 'a/': word('gib') + word('bed'), 'words/': entry('gib', 'a/') + entry('bed', 'b/') }),
    ).toEqual(['a/: /shop/words/#word-bed (no way back)']);
  });

  test('a page that is named for a word that it does not link to is told', () => {
    expect(oneWay({ 'a/': word('gib'), 'words/': entry('gib', 'a/') + entry('bed', 'a/') })).toEqual([
      'words/#word-bed: /shop/a/ (the word is not linked there)',
    ]);
  });
});
