import AxeBuilder from '@axe-core/playwright';
import { test as base, expect, type Page } from '@playwright/test';
import { watch } from './support/watch.ts';

type Fixtures = {
  /** Problems a test provokes on purpose, e.g. `test.use({ allowedProblems: [/404/] })`. */
  allowedProblems: RegExp[];
  noProblems: undefined;
};

/** Every test fails on a request to another origin, a console or page error, or a content policy violation. */
export const test = base.extend<Fixtures>({
  allowedProblems: [[], { option: true }],
  noProblems: [
    async ({ context, baseURL, allowedProblems }, use) => {
      const problems = await watch(context, new URL(baseURL ?? '').origin);
      await use(undefined);
      expect(problems.filter((problem) => !allowedProblems.some((allowed) => allowed.test(problem)))).toEqual(
        [],
      );
    },
    { auto: true },
  ],
});

const LEVELS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

interface Looked {
  /** A selector: the part of the page that is looked at. */
  part?: string;
  /** The only rules that are tried. */
  rules?: string[];
  /** Rules that are left out. */
  without?: string[];
}

/** Lays out what a long page leaves until it is near, as for somebody who has gone through all of it. */
const layOut = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('* { content-visibility: visible !important; }');
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  });

/** Each WCAG 2.0, 2.1 or 2.2 A/AA rule that axe finds broken on the page, with the elements. */
export async function axeViolations(page: Page, { part = 'html', rules, without = [] }: Looked = {}) {
  await layOut(page);
  const axe = new AxeBuilder({ page })
    .include(part)
    .options({ resultTypes: ['violations'] })
    .setLegacyMode();
  const { violations } = await (rules ? axe.withRules(rules) : axe.withTags(LEVELS))
    .disableRules(without)
    .analyze();
  return violations.map(({ id, help, nodes }) => ({ id, help, where: nodes.map(({ target }) => target) }));
}

/** Fails, naming rule and elements, where the page, or a part of it, breaks such a rule. */
export async function expectNoAxeViolations(page: Page, looked: Looked = {}): Promise<void> {
  expect(await axeViolations(page, looked)).toEqual([]);
}

export { expect };
