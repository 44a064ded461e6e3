import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { pictureFile, SHOWN } from '../../src/found/addresses.ts';
import { readBuilt } from '../../src/found/built-page.ts';

const dist = join(import.meta.dirname, '..', '..', 'dist');
const pages = globSync('**/*.html', { cwd: dist }).map((file) =>
  readBuilt(file.replaceAll('\\', '/').replace(/index\.html$/, ''), readFileSync(join(dist, file), 'utf8')),
);
const listed = pages.filter((page) => page.listed);

/** What stands in more than one page. */
const twice = (texts: readonly string[]): string[] => texts.filter((text, at) => texts.indexOf(text) !== at);

/** Width and height in the head of a PNG (ISO/IEC 15948, section 11.2.1). */
const sizeOf = (png: Buffer): number[] => [png.readUInt32BE(16), png.readUInt32BE(20)];

test('every built page has a title and a description of its own that fit into a list of results', () => {
  expect(pages.length).toBeGreaterThan(120);
  expect(twice(pages.map(({ title }) => title))).toEqual([]);
  expect(twice(pages.map(({ description }) => description))).toEqual([]);
  expect(pages.filter(({ title }) => !title.includes('Halfnut') || title.length > 75)).toEqual([]);
  const odd = pages.filter(({ description: { length } }) => length < 50 || length > SHOWN);
  expect(odd.map(({ page, description }) => [page, description])).toEqual([]);
});

test('only what is of no use to a search asks not to be listed', () => {
  expect(
    pages
      .filter((page) => !page.listed)
      .map(({ page }) => page)
      .toSorted(),
  ).toEqual(['404.html', 'not-kept/', 'why/']);
});

test('every listed page has a picture, and together they stay small', () => {
  const pictures = listed.map(({ page }) => readFileSync(join(dist, pictureFile(page))));
  expect(pictures.filter((png) => String(sizeOf(png)) !== '1200,630')).toEqual([]);
  expect(pictures.reduce((sum, { length }) => sum + length, 0)).toBeLessThan(4e6);
});

test('addresses of the site stand in its pages only where the build was told its address', () => {
  const site = process.env.HALFNUT_SITE;
  const naming = listed.filter(
    ({ html }) => html.includes('rel="canonical"') && html.includes('property="og:image"'),
  );
  expect(naming.length).toBe(site ? listed.length : 0);
  expect(existsSync(join(dist, 'sitemap.xml'))).toBe(Boolean(site));
  expect(readFileSync(join(dist, 'robots.txt'), 'utf8').includes('Sitemap:')).toBe(Boolean(site));
});
