import { isPath } from '../link/is-path.ts';
import { type BuiltPage, plainText } from './built-page.ts';
import { isDrawnLate } from './drawn-late.ts';
import { ELSEWHERE, faultsSaid } from './faults.ts';

const TAG = /<[a-z][\w-]*((?:"[^"]*"|'[^']*'|[^>"'])*)>/gi;
const LINK = /(?:^|\s)(?:href|src)="([^"]*)"/;
const ID = /(?:^|\s)id="([^"]*)"/;

/** What a page leads to, and the places that it has. */
interface Walked {
  readonly links: readonly string[];
  readonly ids: ReadonlySet<string>;
  readonly drawsLater: boolean;
}

function walk(html: string): Walked {
  const attributes = [...html.matchAll(TAG)].map(([, all = '']) => all);
  const of = (pattern: RegExp) => attributes.flatMap((all) => pattern.exec(all)?.[1] ?? []).map(plainText);
  return {
    links: [...new Set(of(LINK))],
    ids: new Set(of(ID)),
    drawsLater: html.includes('<astro-island'),
  };
}

/** A link that leads nowhere: the page that it stands on, below the base, and its address as it is written there. */
export interface DeadLink {
  readonly page: string;
  readonly link: string;
}

export interface Site {
  /** Where the site begins: "/" or "/shop/". */
  readonly base: string;
  /** Whether a file that is no page was built, by its address below the base. */
  readonly hasFile: (path: string) => boolean;
}

/** The links of the built pages that lead to no page, no file, or no place on the page. */
export function deadLinks(pages: readonly BuiltPage[], { base, hasFile }: Site): DeadLink[] {
  const walked = new Map(pages.map(({ page, html }) => [page, walk(html)]));
  const hasPlace = (page: string, anchor: string): boolean => {
    const { ids, drawsLater } = walked.get(page)!;
    return ids.has(anchor) || (drawsLater && isDrawnLate(page, anchor));
  };
  const leads = (from: string, link: string): boolean => {
    const [address = '', ...rest] = link.split('#');
    const anchor = decodeURIComponent(rest.join('#'));
    const [path = ''] = address.split('?');
    if (path !== '' && !path.startsWith(base)) return false;
    const to = path === '' ? from : path.slice(base.length);
    if (!walked.has(to)) return anchor === '' && to !== '' && hasFile(to);
    return anchor === '' || isPath(anchor) || hasPlace(to, anchor);
  };
  return [...walked].flatMap(([page, { links }]) =>
    links.filter((link) => !ELSEWHERE.test(link) && !leads(page, link)).map((link) => ({ page, link })),
  );
}

/** What is said when a build ends for dead links. */
export const deadLinksSaid = (dead: readonly DeadLink[]): string =>
  faultsSaid(
    'Links that lead nowhere',
    dead.map(({ page, link }) => `${page || 'the first page'} → ${link}`),
  );
