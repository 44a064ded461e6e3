const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  '#34': '"',
  '#38': '&',
  '#39': "'",
  '#x27': "'",
};

/** Text of HTML: entities become what they stand for. */
export const plainText = (html: string): string =>
  html.replace(/&(#?\w+);/g, (whole, name: string) => ENTITIES[name] ?? whole);

/** A built page, as far as finding and showing it goes. */
export interface BuiltPage {
  /** Below the base: "plan/". */
  readonly page: string;
  readonly title: string;
  readonly description: string;
  /** False where the page asks not to be listed. */
  readonly listed: boolean;
  readonly html: string;
}

const first = (html: string, pattern: RegExp): string => plainText(pattern.exec(html)?.[1] ?? '');

/** Reads a page as it was built. */
export const readBuilt = (page: string, html: string): BuiltPage => ({
  page,
  title: first(html, /<title>([^<]*)<\/title>/),
  description: first(html, /<meta name="description" content="([^"]*)"/),
  listed: !/<meta name="robots" content="noindex"/.test(html),
  html,
});
