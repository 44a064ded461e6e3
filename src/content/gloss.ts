import type { Word } from './glossary/word.ts';
import { glossary } from './glossary.ts';

/** A stretch of text: as it is, or the first use of a word of the trade. */
export type Stretch = string | { readonly text: string; readonly word: string };

const LETTER = '[\\p{L}\\p{N}]';

/** As forms are looked up: small letters, plain apostrophes, and a space for a hyphen. */
const plainForm = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .replace(/’/g, "'");

/** The word and its plural by the plain rule; what ends in s is left as it is. */
const withPlural = (form: string): string[] => {
  if (/s$/.test(form)) return [form];
  if (/(x|z|ch|sh)$/.test(form)) return [form, `${form}es`];
  if (/[^aeiou]y$/.test(form)) return [form, form.replace(/y$/, 'ies')];
  return [form, `${form}s`];
};

/** Every form of a word that becomes a link in running text; of one with brackets only what they hold does. */
export const formsOf = ({
  word,
  also = [],
  linked = [word, ...also].flatMap(withPlural),
}: Word): readonly string[] => linked || [];

/** A form in its parts: what must stand before, what becomes the link, what must stand behind. */
const partsOf = (form: string) => {
  const [, before = '', link = form, behind = ''] = /^(.*)\((.*)\)(.*)$/.exec(form) ?? [];
  return [before, link, behind] as const;
};

const forms = glossary.flatMap(({ words }) =>
  words.flatMap((each) => formsOf(each).map((form) => ({ word: each.word, parts: partsOf(form) }))),
);
const wordOf = new Map(forms.map(({ parts: [, link], word }) => [plainForm(link), word]));
/** A space in a form may be a hyphen in the text, or the end of a line. */
const asPattern = (part: string): string =>
  part
    .replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
    .replaceAll(' ', '(?:\\s+|-)')
    .replaceAll("'", "['’]");
const [BEFORE, BEHIND] = [`(?<!${LETTER}|${LETTER}-)`, `(?!${LETTER}|-${LETTER})`];
const patterns = forms
  .map(({ parts }) => parts.map(asPattern))
  .sort(([, a = ''], [, b = '']) => b.length - a.length)
  .map(([before, link, behind]) => {
    const after = before && `(?<=${BEFORE}${before}${link})`;
    return link + after + (behind && `(?=${behind}${BEHIND})`);
  });
const ANY = new RegExp(`${BEFORE}(?:${patterns.join('|')})${BEHIND}`, 'giu');

const wordIn = (text: string): string => wordOf.get(plainForm(text))!;

/**
 * Cuts text at each word of the trade that is not in `used` yet, and puts it there: longest form first, whole words,
 * in capital or small letters.
 */
export function gloss(text: string, used: Set<string>): Stretch[] {
  const stretches: Stretch[] = [];
  let done = 0;
  for (const { 0: found, index } of text.matchAll(ANY)) {
    const word = wordIn(found);
    if (used.has(word)) continue;
    used.add(word);
    stretches.push(text.slice(done, index), { text: found, word });
    done = index + found.length;
  }
  return [...stretches, text.slice(done)].filter((stretch) => stretch !== '');
}

/** Markdown without what carries no links to words: headings, links, code, and pieces such as figures. */
const running = (markdown: string): string =>
  markdown.replace(/^(import|export|#+) .*$/gm, '').replace(/`[^`]*`|<[^>]*>|\[[^\]]*\]\([^)]*\)/g, '|');

/** The words of the trade that a page of the book links to, in the order of their first use, with how often each is used. */
export function usesIn(markdown: string): ReadonlyMap<string, number> {
  const uses = new Map<string, number>();
  for (const [found] of running(markdown).matchAll(ANY)) {
    const word = wordIn(found);
    uses.set(word, (uses.get(word) ?? 0) + 1);
  }
  return uses;
}
