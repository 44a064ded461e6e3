export interface MapEntry {
  readonly page: string;
  /** ISO day on which the page was last changed, where something on it says so. */
  readonly changed?: string | undefined;
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

/** The sitemap of sitemaps.org, protocol 0.9. `home` is the address of the first page, with a stroke at its end. */
export function sitemapOf(entries: readonly MapEntry[], home: string): string {
  const urls = entries.map(({ page, changed }) => {
    const day = changed ? `<lastmod>${changed}</lastmod>` : '';
    return `  <url><loc>${escaped(new URL(page, home).href)}</loc>${day}</url>\n`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${urls.join('')}</urlset>\n`;
}

/** Everything may be read; where the sitemap is, if the site knows its own address (RFC 9309). */
export const robotsOf = (home: string | undefined): string =>
  `User-agent: *\nAllow: /\n${home ? `Sitemap: ${new URL('sitemap.xml', home).href}\n` : ''}`;
