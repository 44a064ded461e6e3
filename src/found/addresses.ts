/** A page of this site below its base: "", "plan/", "questions/control/"; from a path such as "/halfnut/plan/". */
export const pageAt = (pathname: string, base: string): string => {
  const start = base.replace(/\/?$/, '/');
  return pathname.startsWith(start) ? pathname.slice(start.length) : pathname.replace(/^\//, '');
};

/** The picture of a page, below the base: "pictures/questions/control.png". */
export const pictureFile = (page: string): string => `pictures/${page.replace(/\/$/, '') || 'home'}.png`;

export interface Described {
  readonly title: string;
  readonly description: string;
}

export interface Address {
  /** Where the site stands: "https://example.org"; undefined where nobody has said. */
  readonly site: URL | undefined;
  readonly base: string;
  /** Of this page, with the base. */
  readonly pathname: string;
}

export interface HeadTag {
  readonly tag: 'meta' | 'link';
  readonly attributes: Readonly<Record<string, string>>;
}

const og = (property: string, content: string): HeadTag => ({
  tag: 'meta',
  attributes: { property: `og:${property}`, content },
});

/** What a page says of itself to a search or a message. Without the site's address nothing that would need it is invented. */
export function headTags({ title, description }: Described, { site, base, pathname }: Address): HeadTag[] {
  const said = [
    og('site_name', 'Halfnut'),
    og('type', 'website'),
    og('title', title),
    og('description', description),
  ];
  if (!site) return said;
  const here = new URL(pathname, site).href;
  const picture = new URL(base.replace(/\/?$/, '/') + pictureFile(pageAt(pathname, base)), site).href;
  return [
    { tag: 'link', attributes: { rel: 'canonical', href: here } },
    ...said,
    og('url', here),
    og('image', picture),
    og('image:width', '1200'),
    og('image:height', '630'),
    og('image:alt', `${title}: a drawing with figures of this page`),
    { tag: 'meta', attributes: { name: 'twitter:card', content: 'summary_large_image' } },
  ];
}

/** As much of a description as a list of search results shows, in characters. */
export const SHOWN = 160;

/** The whole sentences of a text that fit into such a list; the first one always stands. */
export function inShort(text: string): string {
  const [first = '', ...rest] = text.split(/(?<=[.?!]) (?=[A-Z“])/);
  let said = first;
  for (const sentence of rest) {
    if (said.length + 1 + sentence.length > SHOWN) break;
    said = `${said} ${sentence}`;
  }
  return said;
}
