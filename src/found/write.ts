import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { editionByName } from '../content/edition.ts';
import { inventedOwners } from '../content/invented-owners.ts';
import { aboutPage } from './about.ts';
import { pictureFile } from './addresses.ts';
import type { BuiltPage } from './built-page.ts';
import { apacheHeaders, caddySite, headersOf, nginxServer, plainHeaders } from './headers.ts';
import { lookOf } from './look.ts';
import { pictureSvg } from './picture.ts';
import { pngOf } from './png.ts';
import { robotsOf, sitemapOf } from './sitemap.ts';

function put(file: string, content: string | Buffer): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, content);
}

/** The day of the prices that a page shows, where it shows those of one edition for ever. */
function changedOn(page: string): string | undefined {
  const [kind = '', id = ''] = page.split('/');
  const owner = kind === 'starting-points' && inventedOwners.find((each) => each.id === id);
  const edition = kind === 'prices' ? id : owner ? owner.path.edition : '';
  return editionByName(edition)?.date;
}

/** Draws a picture for every listed page below `dist`; returns how many bytes they are. */
export async function writePictures(
  pages: readonly BuiltPage[],
  dist: string,
  root: string,
): Promise<number> {
  const look = lookOf(root);
  const draw = async (built: BuiltPage): Promise<number> => {
    const { drawing, ...text } = aboutPage(built, look);
    const png = await pngOf(pictureSvg(text, drawing, look));
    put(join(dist, pictureFile(built.page)), png);
    return png.length;
  };
  // The library works on a few of them at a time; what is waiting costs no more than its drawing.
  const sizes = await Promise.all(pages.filter(({ listed }) => listed).map(draw));
  return sizes.reduce((sum, size) => sum + size, 0);
}

/** robots.txt, and the sitemap where the address of the first page is known. */
export function writeLists(pages: readonly BuiltPage[], dist: string, home: string | undefined): void {
  put(join(dist, 'robots.txt'), robotsOf(home));
  if (!home) return;
  const listed = pages.filter((each) => each.listed).map(({ page }) => ({ page, changed: changedOn(page) }));
  put(join(dist, 'sitemap.xml'), sitemapOf(listed, home));
}

/**
 * The headers that go with the pages: two files that hosts read beside the pages, and two for the settings of a server,
 * which are no part of the site.
 */
export function writeHeaders(policy: string, base: string, dist: string, root: string): void {
  const headers = headersOf(policy);
  put(join(dist, '_headers'), plainHeaders(headers, base));
  put(join(dist, '.htaccess'), apacheHeaders(headers, base));
  put(join(root, 'hosting', 'nginx.conf'), nginxServer(headers, base));
  put(join(root, 'hosting', 'Caddyfile'), caddySite(headers, base));
}
