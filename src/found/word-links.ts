import type { BuiltPage } from './built-page.ts';
import type { DeadLink } from './links.ts';

const WORDS = 'words/';
const WORD_LINK = /<a class="gloss" href="([^"#]*)#([^"]*)"/g;

/** The entries of the page of words: their anchor, and the addresses that they lead to. */
const entriesOf = (html: string): Map<string, Set<string>> =>
  new Map(
    html
      .split(/<div id="(?=word-)/)
      .slice(1)
      .map((entry) => [
        entry.slice(0, entry.indexOf('"')),
        new Set([...entry.split('</dl>')[0]!.matchAll(/href="([^"#]*)"/g)].map(([, href]) => href!)),
      ]),
  );

/** Links from the text to a word whose entry does not lead back to the page, and pages that an entry names for nothing. */
export function oneWayWords(pages: readonly BuiltPage[], base: string): DeadLink[] {
  const entries = entriesOf(pages.find(({ page }) => page === WORDS)?.html ?? '');
  const used = new Map(
    pages.map(({ page, html }) => [page, new Set([...html.matchAll(WORD_LINK)].map(([, , word]) => word!))]),
  );
  const there = [...used].flatMap(([page, words]) =>
    [...words]
      .filter((word) => !entries.get(word)?.has(base + page))
      .map((word) => ({ page, link: `${base}${WORDS}#${word} (no way back)` })),
  );
  const back = [...used].flatMap(([page, words]) =>
    [...entries]
      .filter(([word, places]) => places.has(base + page) && !words.has(word))
      .map(([word]) => ({ page: `${WORDS}#${word}`, link: `${base}${page} (the word is not linked there)` })),
  );
  return [...there, ...back];
}
