import { gloss } from '../../content/gloss.ts';

const TAG = /<!--[\s\S]*?-->|<(\/?)([a-zA-Z][\w-]*)((?:"[^"]*"|'[^']*'|[^>"'])*)>/g;
const VOID = new Set(['area', 'br', 'col', 'hr', 'img', 'input', 'link', 'meta', 'source', 'wbr']);
/** Where a word stays as it is: headings and names, what leads somewhere already, code, figures, and what a script draws. */
const CLOSED =
  /^(h[1-6]|dt|a|button|summary|label|code|pre|figure|svg|math|script|style|template|astro-island)$/;
const isClosed = (name: string, attributes: string): boolean =>
  CLOSED.test(name) || /\bclass="working"/.test(attributes);

interface Open {
  readonly name: string;
  readonly closed: boolean;
}

/** What stands open after a tag. */
function after(open: readonly Open[], [, end, tag, attributes = '']: RegExpMatchArray): readonly Open[] {
  const name = tag?.toLowerCase();
  if (!name) return open;
  if (end) return open.slice(0, Math.max(0, open.map((each) => each.name).lastIndexOf(name)));
  if (VOID.has(name) || attributes.endsWith('/')) return open;
  return [...open, { name, closed: !!open.at(-1)?.closed || isClosed(name, attributes) }];
}

const linked = (text: string, used: Set<string>, placeOf: (word: string) => string): string =>
  gloss(text, used)
    .map((each) =>
      typeof each === 'string'
        ? each
        : `<a class="gloss" href="${placeOf(each.word)}" data-keep-path>${each.text}</a>`,
    )
    .join('');

/** HTML of a page with the first use of each word of the trade made a link to `placeOf(word)`, an address ready for HTML. */
export function glossHtml(html: string, placeOf: (word: string) => string): string {
  const used = new Set<string>();
  let open: readonly Open[] = [];
  let done = 0;
  let out = '';
  const take = (to: number): void => {
    const text = html.slice(done, to);
    out += open.at(-1)?.closed ? text : linked(text, used, placeOf);
  };
  for (const tag of html.matchAll(TAG)) {
    take(tag.index);
    out += tag[0];
    done = tag.index + tag[0].length;
    open = after(open, tag);
  }
  take(html.length);
  return out;
}
