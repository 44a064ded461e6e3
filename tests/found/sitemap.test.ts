import { expect, test } from 'vitest';
import { readBuilt } from '../../src/found/built-page.ts';
import { robotsOf, sitemapOf } from '../../src/found/sitemap.ts';

test('the sitemap names every page below the first, with a day only where one is known', () => {
  const map = sitemapOf(
    [{ page: '' }, { page: 'prices/2026-12/', changed: '2026-11-27' }],
    'https://example.org/shop/',
  );
  expect(map.match(/<url>.*<\/url>/g)).toEqual([
    '<url><loc>https://example.org/shop/</loc></url>',
    '<url><loc>https://example.org/shop/prices/2026-12/</loc><lastmod>2026-11-27</lastmod></url>',
  ]);
  expect(map).toContain('xmlns="http://www.sitemaps.org/schemas/sitemap/0.9"');
});

test('robots.txt names the sitemap only where the site knows its address', () => {
  expect(robotsOf('https://example.org/')).toContain('Sitemap: https://example.org/sitemap.xml');
  expect(robotsOf(undefined)).toBe('User-agent: *\nAllow: /\n');
});

test('a built page gives title and description in plain text, and says whether it is listed', () => {
  const html =
    '<title>Bits &amp; belts – Halfnut</title><meta name="description" content="All of &#34;it&#34;.">';
  expect(readBuilt('a/', html)).toMatchObject({
    title: 'Bits & belts – Halfnut',
    description: 'All of "it".',
    listed: true,
  });
  expect(readBuilt('a/', `${html}<meta name="robots" content="noindex">`).listed).toBe(false);
});
